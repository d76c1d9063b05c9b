using Tickover.Reports.Mixture;

namespace Tickover.Reports.Balance;

/// <summary>What the history of rounds shows: rounds of one speed, oldest first.</summary>
/// <param name="Rows">The rounds.</param>
/// <param name="Unit">Unit of the figures, such as "kg/h".</param>
public sealed record RoundsView(IReadOnlyList<RoundRow> Rows, string Unit)
{
    /// <summary>The size.</summary>
    public PictureSize Size { get; init; } = PictureSize.Full;

    /// <summary>Begins every id inside; letters, digits and hyphens.</summary>
    public string IdPrefix { get; init; } = "rounds";
}
