using Tickover.Workshop.JetChoice;

namespace Tickover.Workshop.Demonstration;

/// <summary>Texts of the car documents of the invented cars, given by whoever can read the samples; what else the samples hold, where it is at hand.</summary>
/// <param name="Tern2800">Document of the Larkfield Tern 2800.</param>
/// <param name="OspreyV8">Document of the Larkfield Osprey V8.</param>
/// <param name="Gannet1500">Document of the Samphire Gannet 1500.</param>
public sealed record DemonstrationDocuments(string Tern2800, string OspreyV8, string Gannet1500)
{
    /// <summary>The Tern's road run; null leaves it out.</summary>
    public DemonstrationRun? TernRoad { get; init; }

    /// <summary>The Osprey's road run; null leaves it out.</summary>
    public DemonstrationRun? OspreyRoad { get; init; }

    /// <summary>Jets and chokes on the house's shelf; null leaves it empty.</summary>
    public JetShelf? Shelf { get; init; }

    /// <summary>Texts of sample worksheets by the name of their file; those not at hand are left out of the visits.</summary>
    public IReadOnlyDictionary<string, string> Sheets { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);
}
