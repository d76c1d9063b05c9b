using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>Why a part of the map has no colour, in words.</summary>
internal sealed record NoAnswer(PointValidity Flag, string Words, string ShortWords)
{
    /// <summary>The reasons, the plainest first: where several hold, that one is given.</summary>
    internal static readonly IReadOnlyList<NoAnswer> All =
    [
        new(PointValidity.NoAir, "No air passes here", "No air"),
        new(PointValidity.Overrun, "Engine is driven by the car here", "Driven by the car"),
        new(PointValidity.NoFuel, "No fuel flows here", "No fuel"),
        new(PointValidity.TooLeanToRun, "Too lean to run", "Too lean to run"),
        new(PointValidity.TooRichToRun, "Too rich to run", "Too rich to run"),
        new(PointValidity.BeyondRatedSpeed, "Beyond the rated speed", "Beyond rated speed"),
        new(PointValidity.NotSettled, "Did not settle: no answer here", "Did not settle"),
    ];

    private static readonly PointValidity Any = All.Aggregate(PointValidity.Inside, (flags, reason) => flags | reason.Flag);

    /// <summary>Whether a point gives an answer that may be coloured.</summary>
    internal static bool HasAnswer(BarrelPoint point) =>
        (point.Validity & Any) == PointValidity.Inside && double.IsFinite(point.Lambda) && point.Lambda > 0;

    /// <summary>Why a point gives none; null where it does.</summary>
    internal static NoAnswer? Why(BarrelPoint point) =>
        HasAnswer(point) ? null : All.FirstOrDefault(r => point.Validity.HasFlag(r.Flag)) ?? All[^1];
}
