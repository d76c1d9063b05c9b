using System.Globalization;
using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>A sketched outline that runs straight on.</summary>
internal static class PrismBuilder
{
    public static TankShapeResult Of(IReadOnlyList<OutlinePoint> sketched, double depth, OutlineView view, double wall)
    {
        if (Problem(sketched) is { } problem)
        {
            return TankShapeResult.Refused(problem);
        }

        var points = Anticlockwise(sketched);
        if (Outline.Rounded(points) is not { } round)
        {
            return TankShapeResult.Refused("The outline's corner radii do not fit: two of them need more than the side between. Make them smaller.");
        }

        var inside = Outline.Inside(round, wall);
        if (Outline.Crossing(inside) is not null || Outline.TwiceArea(inside) <= 0 || depth <= 2 * wall)
        {
            return TankShapeResult.Refused("The wall is so thick that nothing is left inside.");
        }

        return TankShapeResult.Of(Extrude(inside, depth - 2 * wall, view, wall));
    }

    private static string? Problem(IReadOnlyList<OutlinePoint> points)
    {
        if (points.Count is < 3 or > Outline.MostPoints)
        {
            return string.Create(CultureInfo.InvariantCulture, $"An outline has 3 to {Outline.MostPoints} corners; this one has {points.Count}.");
        }

        for (var i = 0; i < points.Count; i++)
        {
            if (Outline.Distance(points[i], points[(i + 1) % points.Count]) <= 0)
            {
                return string.Create(CultureInfo.InvariantCulture, $"Corners {i + 1} and {(i + 1) % points.Count + 1} of the outline lie in one place. Leave one out; the outline closes by itself.");
            }
        }

        if (Outline.Crossing(points) is { } crossing)
        {
            return string.Create(
                CultureInfo.InvariantCulture,
                $"The outline crosses or touches itself: the side from corner {crossing.First + 1} meets the side from corner {crossing.Second + 1}. Go round the tank once, corner by corner.");
        }

        return Outline.TwiceArea(points) == 0 ? "The outline has no area." : null;
    }

    private static OutlinePoint[] Anticlockwise(IReadOnlyList<OutlinePoint> points) =>
        Outline.TwiceArea(points) > 0 ? [.. points] : [.. points.Reverse()];

    private static TankShape Extrude(OutlinePoint[] points, double depth, OutlineView view, double wall)
    {
        // Plan stands on the outline's plane; the other views are centred on it, as a tank is measured from its middle.
        var (near, far) = view == OutlineView.Plan ? (wall, wall + depth) : (-depth / 2, depth / 2);
        var facets = new List<TankFacet>();
        void Add(SpaceVector a, SpaceVector b, SpaceVector c) => facets.Add(view == OutlineView.Side ? new TankFacet(a, c, b) : new TankFacet(a, b, c));
        SpaceVector At(int i, double along) => Place(points[i % points.Length], along, view);
        foreach (var (a, b, c) in EarClipping.Triangles(points))
        {
            Add(At(a, far), At(b, far), At(c, far));
            Add(At(a, near), At(c, near), At(b, near));
        }

        for (var i = 0; i < points.Length; i++)
        {
            Add(At(i, near), At(i + 1, near), At(i + 1, far));
            Add(At(i, near), At(i + 1, far), At(i, far));
        }

        return new TankShape(facets);
    }

    // Ahead-up seen from the right runs the other way round than left-up seen from behind; Side turns its facets for it.
    private static SpaceVector Place(OutlinePoint p, double along, OutlineView view) => view switch
    {
        OutlineView.Side => new SpaceVector(p.Across, along, p.Up),
        OutlineView.Rear => new SpaceVector(along, p.Across, p.Up),
        _ => new SpaceVector(p.Across, p.Up, along),
    };
}
