using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Cars.Writing;

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

    /// <summary>Reads a car document that stands whole inside another document; never throws for what somebody typed.</summary>
    /// <param name="json">The text of the car document.</param>
    /// <param name="at">Where it stands there, such as <c>engine.car</c>: the path of every fault and warning begins with it.</param>
    /// <returns>The car, or all faults.</returns>
    public static CarReading Read(string json, string at)
    {
        Fault Within(Fault fault) => fault with { Path = fault.Path is SourceParser.WholeDocument ? at : $"{at}.{fault.Path}" };
        var reading = Read(json);
        return reading with { Faults = [.. reading.Faults.Select(Within)], Warnings = [.. reading.Warnings.Select(Within)] };
    }

    /// <summary>Changes one figure in the document and reads it again.</summary>
    /// <param name="car">The car.</param>
    /// <param name="path">
    /// Where: <c>engine.bore</c>, <c>ambient.temperature</c>, <c>fuel</c>, <c>barrel.mainJet</c> for all barrels alike,
    /// or <c>carburettors[0].barrels[1].mainJet</c> for one. A change for all barrels takes out what stands for single ones.
    /// </param>
    /// <param name="text">The new text, such as "32 mm" or "135"; empty to take the member out, so that the wider setting or the default holds.</param>
    /// <returns>The changed car, or the faults; the car given is left as it is.</returns>
    public static CarReading Change(Car car, string path, string text)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(text);
        return Change(car, [new(path, text)]);
    }

    /// <summary>Changes several figures at once and reads the document again, so that a choke may grow together with its bore.</summary>
    /// <param name="car">The car.</param>
    /// <param name="changes">Paths and new texts, each as for a single change.</param>
    /// <returns>The changed car, or all faults; the car given is left as it is.</returns>
    public static CarReading Change(Car car, IEnumerable<KeyValuePair<string, string>> changes)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(changes);
        return CarChange.Apply(car, changes);
    }

    /// <summary>The JSON Schema (draft 2020-12) of a car document, generated from the catalogue.</summary>
    /// <returns>The schema, JSON text with a final newline.</returns>
    public static string Schema() => CarSchema.Generate();

    /// <summary>The guide to the format, generated from the catalogue.</summary>
    /// <returns>Markdown with a final newline.</returns>
    public static string Guide() => CarGuide.Generate();
}
