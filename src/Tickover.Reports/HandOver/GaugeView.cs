namespace Tickover.Reports.HandOver;

/// <summary>What the picture of the gauge shows.</summary>
/// <param name="Tanks">One to four tanks, from the left.</param>
/// <param name="Pipe">What is written at the pipe between them, such as "10 mm"; empty where not measured.</param>
public sealed record GaugeView(IReadOnlyList<GaugeVessel> Tanks, string Pipe)
{
    /// <summary>Begins every id inside the picture; letters, digits and hyphens.</summary>
    public string IdPrefix { get; init; } = "gauge";
}
