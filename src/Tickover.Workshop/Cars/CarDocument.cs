using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.Cars;

/// <summary>Reads, changes and writes car documents.</summary>
public static class CarDocument
{
    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text of the document.</param>
    /// <returns>The car, or all faults.</returns>
    public static CarReading Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        return CarReader.Read(json);
    }

    /// <summary>Changes one figure in the document and reads it again.</summary>
    /// <param name="car">The car.</param>
    /// <param name="path">
    /// Where: <c>engine.bore</c>, <c>ambient.temperature</c>, <c>fuel</c>, <c>barrel.mainJet</c> for all barrels alike,
    /// or <c>carburettors[0].barrels[1].mainJet</c> for one.
    /// </param>
    /// <param name="text">The new text, such as "32 mm" or "135"; empty to go back to the default.</param>
    /// <returns>The changed car, or the faults; the car given is left as it is.</returns>
    public static CarReading Change(Car car, string path, string text) => throw new NotSupportedException("lands with the car document");
}
