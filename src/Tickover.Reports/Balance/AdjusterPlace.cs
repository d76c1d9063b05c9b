using Tickover.Reports.Charts;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Reports.Balance;

/// <summary>Where an adjuster is on the drawing.</summary>
/// <param name="Adjuster">The adjuster.</param>
/// <param name="Form">What it looks like.</param>
/// <param name="At">Its middle.</param>
/// <param name="From">One end of a rod; else its middle.</param>
/// <param name="To">The other end of a rod; else its middle.</param>
internal sealed record AdjusterPlace(Adjuster Adjuster, AdjusterForm Form, ChartPoint At, ChartPoint From, ChartPoint To)
{
    internal static AdjusterPlace Spot(Adjuster adjuster, AdjusterForm form, ChartPoint at) => new(adjuster, form, at, at, at);

    internal static AdjusterPlace Rod(Adjuster adjuster, ChartPoint from, ChartPoint to) =>
        new(adjuster, AdjusterForm.Rod, new ChartPoint((from.X + to.X) / 2, (from.Y + to.Y) / 2), from, to);
}
