using System.Globalization;
using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>Takes cut-outs from a tank: their walls, turned inside out, join its own. docs/physics/tanks.md (11).</summary>
internal static class CutOuts
{
    private const double Nothing = 1e-9; // of the tank's volume

    public static TankShapeResult Of(TankShape tank, IReadOnlyList<TankShape> cutOuts)
    {
        var convex = ConvexBody.IsConvex(tank);
        var planes = ConvexBody.Planes(tank).ToArray();
        var bodies = new List<ConvexBody>();
        for (var i = 0; i < cutOuts.Count; i++)
        {
            if (Fit(tank, convex, cutOuts[i], i + 1) is { } problem)
            {
                return TankShapeResult.Refused(problem);
            }

            var body = convex
                ? planes.Aggregate(new ConvexBody(cutOuts[i]), (b, p) => b.Inside(p))
                : Marked(tank, cutOuts[i]);
            if (body.Volume <= Nothing * tank.VolumeCubicMetres)
            {
                return TankShapeResult.Refused(Numbered(i + 1, "lies outside the tank: it takes nothing away. Look at its place."));
            }

            if (Overlapped(cutOuts, i) is { } other)
            {
                return TankShapeResult.Refused(Numbered(i + 1, string.Create(CultureInfo.InvariantCulture, $"and cut-out {other + 1} overlap. Give the common part to one of them.")));
            }

            bodies.Add(body);
        }

        var cut = new TankShape([.. tank.Facets, .. bodies.SelectMany(b => b.Faces).SelectMany(f => f.Facets(f.OnWall ? -1 : 1)).Select(f => f.Turned())]);
        return cut.VolumeCubicMetres > Nothing * tank.VolumeCubicMetres
            ? TankShapeResult.Of(cut)
            : TankShapeResult.Refused("The cut-outs leave nothing of the tank.");
    }

    private static string? Fit(TankShape tank, bool convex, TankShape cutOut, int number)
    {
        if (!ConvexBody.IsConvex(cutOut))
        {
            return Numbered(number, "bulges inwards. Make it of boxes, round pieces or outlines without dents.");
        }

        if (convex)
        {
            return null;
        }

        // Nothing can be cut off at a dented wall with certainty, so all of it has to lie within.
        var middle = cutOut.Middle;
        var outside = cutOut.Facets.SelectMany(f => new[] { f.A, f.B, f.C }).Distinct()
            .Any(c => !Holds(tank, c + 1e-6 * (middle - c)));
        var pierced = ConvexBody.Planes(cutOut).ToArray();
        var inner = tank.Facets.Any(f => Array.TrueForAll(pierced, p => p.Beyond(1.0 / 3 * (f.A + f.B + f.C)) < -ConvexBody.Near(tank)));
        return outside || inner
            ? Numbered(number, "sticks out of a tank that has dents of its own. Draw it as a notch in the outline, or end it at the wall.")
            : null;
    }

    // The solid angle the tank's wall fills, seen from a place: 4π within, 0 outside (van Oosterom and Strackee 1983, from memory).
    private static bool Holds(TankShape tank, SpaceVector place)
    {
        var half = 0.0;
        foreach (var facet in tank.Facets)
        {
            var (a, b, c) = (facet.A - place, facet.B - place, facet.C - place);
            var (la, lb, lc) = (a.Length, b.Length, c.Length);
            half += Math.Atan2(a.Dot(b.Cross(c)), la * lb * lc + a.Dot(b) * lc + b.Dot(c) * la + c.Dot(a) * lb);
        }

        return half > Math.PI;
    }

    // A face is in the wall where the tank ends just beyond it.
    private static ConvexBody Marked(TankShape tank, TankShape cutOut) => new(
        [.. new ConvexBody(cutOut).Faces.Select(f => f with
        {
            OnWall = !Holds(tank, 1.0 / 3 * (f.Corners[0] + f.Corners[1] + f.Corners[2])
                + 1e-6 * (tank.Highest - tank.Lowest).Length * (f.Corners[1] - f.Corners[0]).Cross(f.Corners[2] - f.Corners[0]).ToUnit()),
        })],
        ConvexBody.Near(cutOut));

    private static int? Overlapped(IReadOnlyList<TankShape> cutOuts, int i)
    {
        for (var j = 0; j < i; j++)
        {
            var common = ConvexBody.Planes(cutOuts[j]).Aggregate(new ConvexBody(cutOuts[i]), (b, p) => b.Inside(p));
            if (common.Volume > Nothing * cutOuts[i].VolumeCubicMetres)
            {
                return j;
            }
        }

        return null;
    }

    private static string Numbered(int number, string what) => string.Create(CultureInfo.InvariantCulture, $"Cut-out {number} {what}");
}
