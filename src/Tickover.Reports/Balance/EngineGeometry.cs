using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Reports.Balance;

/// <summary>Where everything of an engine stands on the drawing from above.</summary>
internal sealed record EngineGeometry
{
    internal const double FullWidth = 772;
    internal const double PhoneWidth = 366;

    internal required double Width { get; init; }

    internal required double Height { get; init; }

    /// <summary>How far a ring reaches, its bracket included.</summary>
    internal required double RingReach { get; init; }

    /// <summary>Middles of the rings by barrel.</summary>
    internal required IReadOnlyDictionary<int, ChartPoint> Rings { get; init; }

    /// <summary>Whether what a ring says stands to its right rather than below.</summary>
    internal bool LabelsBeside { get; init; }

    /// <summary>Whether percent and word share one line.</summary>
    internal bool LabelsInOneLine { get; init; }

    internal required IReadOnlyList<Box> Heads { get; init; }

    internal required IReadOnlyList<Box> Bodies { get; init; }

    /// <summary>Runners, plenums and trumpets.</summary>
    internal required IReadOnlyList<Polyline> Castings { get; init; }

    internal required IReadOnlyList<(ChartPoint From, ChartPoint To)> Spindles { get; init; }

    internal required IReadOnlyList<(int Cylinder, ChartPoint At)> Cylinders { get; init; }

    internal required double CylinderRadius { get; init; }

    internal required IReadOnlyList<AdjusterPlace> Adjusters { get; init; }

    internal required IReadOnlyList<EngineWord> Words { get; init; }

    /// <summary>Arrows of the air that goes in, tail and point.</summary>
    internal required IReadOnlyList<(ChartPoint From, ChartPoint To)> Air { get; init; }

    /// <summary>The arrow to the front, tail and point.</summary>
    internal required (ChartPoint From, ChartPoint To) Front { get; init; }

    /// <summary>Places an engine.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="size">The size of the picture.</param>
    internal static EngineGeometry Of(EnginePlan plan, PictureSize size) =>
        plan.Banks > 1 ? BankedPlacing.Of(plan, size) : InLinePlacing.Of(plan, size);
}
