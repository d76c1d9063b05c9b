using Tickover.Workshop.Cars;

namespace Tickover.Web.Api;

/// <summary>A car on the shelf as programs see it.</summary>
/// <param name="Id">Its name in addresses.</param>
/// <param name="Name">Its name in the workshop; null where it cannot be read.</param>
/// <param name="Layout">Layout in words.</param>
/// <param name="Cylinders">Number of cylinders.</param>
/// <param name="Barrels">Number of barrels.</param>
/// <param name="Faults">What is wrong with its document.</param>
public sealed record CarAnswer(string Id, string? Name, string? Layout, int? Cylinders, int? Barrels, IReadOnlyList<Fault> Faults)
{
    /// <summary>Says it of a document.</summary>
    /// <param name="shelved">The document.</param>
    /// <returns>The answer.</returns>
    public static CarAnswer Of(ShelvedCar shelved)
    {
        ArgumentNullException.ThrowIfNull(shelved);
        var car = shelved.Reading.Car;
        return new CarAnswer(shelved.Id.Text, car?.Name, car?.Layout, car?.CylinderCount, car?.Barrels.Count, shelved.Reading.Faults);
    }
}
