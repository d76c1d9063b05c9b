using Tickover.Reports.Charts;

namespace Tickover.Reports.Balance;

/// <summary>Where a finger takes hold of an adjuster: a circle as wide as a target should be, cut half way to each neighbour, so that none takes another's place.</summary>
internal static class TouchArea
{
    /// <summary>Half the width of a target that has room, px.</summary>
    internal const double Radius = 24;

    private const int Corners = 24;

    /// <summary>The area of one of the adjusters.</summary>
    /// <param name="place">Which.</param>
    /// <param name="all">All of them.</param>
    /// <returns>A closed outline.</returns>
    internal static Polyline Of(AdjusterPlace place, IReadOnlyList<AdjusterPlace> all) =>
        new([.. Enumerable.Range(0, Corners).Select(k => k * 360.0 / Corners).Select(degrees => Arcs.At(place.At, Reach(place, all, degrees), degrees))], Closed: true);

    private static double Reach(AdjusterPlace place, IReadOnlyList<AdjusterPlace> all, double degrees)
    {
        var way = Arcs.At(new ChartPoint(0, 0), 1, degrees);
        return all.Where(o => o != place).Select(o => HalfWay(o.At.X - place.At.X, o.At.Y - place.At.Y, way)).Append(Radius).Min();
    }

    // along a way, the line half way to a neighbour; it lies behind where the way leads off
    private static double HalfWay(double x, double y, ChartPoint way) =>
        (x * way.X) + (y * way.Y) is > 0 and var towards ? ((x * x) + (y * y)) / 2 / towards : double.PositiveInfinity;
}
