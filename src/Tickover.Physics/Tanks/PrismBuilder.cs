using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>A sketched outline that runs straight on.</summary>
internal static class PrismBuilder
{
    public static TankShapeResult Of(IReadOnlyList<OutlinePoint> sketched, double depth, OutlineView view, double wall)
    {
        if (OutlineCheck.Of(sketched).Fault is { } fault)
        {
            return TankShapeResult.Refused(fault.Words);
        }

        var round = Outline.Rounded(Anticlockwise(sketched))!;
        var inside = Outline.Inside(round, wall);
        if (Outline.Crossing(inside) is not null || Outline.TwiceArea(inside) <= 0 || depth <= 2 * wall)
        {
            return TankShapeResult.Refused("The wall is so thick that nothing is left inside.");
        }

        return TankShapeResult.Of(Extrude(inside, depth - 2 * wall, view, wall));
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
