using System.Globalization;

namespace Tickover.Physics.Tanks;

/// <summary>Tells whether corners are the outline of a tank, and where they are not.</summary>
public static class OutlineCheck
{
    /// <summary>Looks at an outline.</summary>
    /// <param name="points">Its corners, either way round, m; it closes by itself.</param>
    /// <returns>The first fault, or the outline with its corners rounded.</returns>
    public static OutlineVerdict Of(IReadOnlyList<OutlinePoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        return Plain(points) is { } fault ? new OutlineVerdict(fault, [])
            : Outline.Rounded(points) is { } round ? new OutlineVerdict(null, round)
            : new OutlineVerdict(Tight(points), []);
    }

    /// <summary>How far what an outline holds may be off, where each side and the depth were measured by tape. docs/physics/tanks.md (21).</summary>
    /// <param name="points">The outline without fault, m.</param>
    /// <param name="depthMetres">How far it runs on, m.</param>
    /// <param name="tapeMetres">One standard deviation of where a side lies, and of the depth, m.</param>
    /// <returns>One standard deviation, m³.</returns>
    public static double BandCubicMetres(IReadOnlyList<OutlinePoint> points, double depthMetres, double tapeMetres)
    {
        ArgumentNullException.ThrowIfNull(points);
        var sides = points.Select((p, i) => Outline.Distance(p, points[(i + 1) % points.Count])).Sum(side => side * side);
        var area = Outline.TwiceArea(points) / 2;
        return tapeMetres * Math.Sqrt(depthMetres * depthMetres * sides + area * area); // tanks (21)
    }

    private static OutlineFault? Plain(IReadOnlyList<OutlinePoint> points)
    {
        if (points.Count is < 3 or > Outline.MostPoints)
        {
            return new OutlineFault(OutlineFaultKind.Corners, [], Line($"An outline has 3 to {Outline.MostPoints} corners; this one has {points.Count}."));
        }

        for (var i = 0; i < points.Count; i++)
        {
            var next = (i + 1) % points.Count;
            if (Outline.Distance(points[i], points[next]) <= 0)
            {
                return new OutlineFault(OutlineFaultKind.SamePlace, [i], Line($"Corners {i + 1} and {next + 1} of the outline lie in one place. Leave one out; the outline closes by itself."));
            }
        }

        if (Outline.TwiceArea(points) == 0 && IsStraight(points))
        {
            return new OutlineFault(OutlineFaultKind.NoArea, [], "The outline has no area.");
        }

        return Outline.Crossing(points) is { } crossing
            ? new OutlineFault(
                OutlineFaultKind.Crossing, [crossing.First, crossing.Second],
                Line($"The outline crosses or touches itself: the side from corner {crossing.First + 1} meets the side from corner {crossing.Second + 1}. Go round the tank once, corner by corner."))
            : null;
    }

    // A figure of eight has no area either, but what is wrong with it is the crossing.
    private static bool IsStraight(IReadOnlyList<OutlinePoint> points) =>
        Enumerable.Range(2, points.Count - 2).All(i => Outline.Turn(points[0], points[1], points[i]) == 0);

    private static OutlineFault Tight(IReadOnlyList<OutlinePoint> points)
    {
        var side = Outline.TightSide(points)!.Value;
        return new OutlineFault(
            OutlineFaultKind.Radii, [side],
            Line($"The outline's corner radii do not fit: at corners {side + 1} and {(side + 1) % points.Count + 1} they need more than the side between. Make them smaller."));
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
