namespace Tickover.Workshop.Demonstration;

/// <summary>Texts of the car documents of the invented cars, given by whoever can read the samples.</summary>
/// <param name="Tern2800">Document of the Larkfield Tern 2800.</param>
/// <param name="OspreyV8">Document of the Larkfield Osprey V8.</param>
/// <param name="Gannet1500">Document of the Samphire Gannet 1500.</param>
public sealed record DemonstrationDocuments(string Tern2800, string OspreyV8, string Gannet1500);
