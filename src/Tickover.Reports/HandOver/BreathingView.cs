namespace Tickover.Reports.HandOver;

/// <summary>What a strip of breathing shows.</summary>
/// <param name="Rows">Rounds, in the order of time.</param>
/// <param name="Unit">Unit of the figures, such as "kg/h".</param>
public sealed record BreathingView(IReadOnlyList<BreathingRow> Rows, string Unit)
{
    /// <summary>Begins every id inside the picture, so that several live on one page; letters, digits and hyphens.</summary>
    public string IdPrefix { get; init; } = "breathing";
}
