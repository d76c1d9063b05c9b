using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>A round tank out of flat facets whose sections and ends hold exactly what the round ones do. docs/physics/tanks.md (10).</summary>
internal static class RoundBuilder
{
    private const int Sides = 180;
    private const int Rings = 24;
    private const double Third = 1.0 / 3;

    public static TankShape Of(RoundTank tank)
    {
        var profile = Profile(tank);
        // A polygon of n sides with the area of the circle.
        var swell = Math.Sqrt(2 * Math.PI / Sides / Math.Sin(2 * Math.PI / Sides)); // tanks (10)
        var facets = new List<TankFacet>();
        for (var ring = 0; ring + 1 < profile.Count; ring++)
        {
            for (var side = 0; side < Sides; side++)
            {
                var (a, b) = (At(profile[ring], side, swell, tank.Lie), At(profile[ring], side + 1, swell, tank.Lie));
                var (c, d) = (At(profile[ring + 1], side + 1, swell, tank.Lie), At(profile[ring + 1], side, swell, tank.Lie));
                if (profile[ring].Radius > 0)
                {
                    facets.Add(new TankFacet(a, b, c));
                }

                if (profile[ring + 1].Radius > 0)
                {
                    facets.Add(new TankFacet(a, c, d));
                }
            }
        }

        return new TankShape(facets);
    }

    // From one tip to the other: how far along, and the radius there.
    private static List<(double Along, double Radius)> Profile(RoundTank tank)
    {
        var (radius, half) = (tank.DiameterMetres / 2, tank.LengthMetres / 2);
        var head = Head(tank, radius);
        var stretch = tank.HeadMetres > 0 ? Exact(tank, radius) / Chorded(head) : 1;
        var far = head.Select(p => (Along: half + p.Along * stretch, p.Radius)).ToList();
        var near = far.Select(p => (-p.Along, p.Radius)).Reverse().ToList();
        return half > 0 ? [.. near, .. far] : [.. near, .. far.Skip(1)];
    }

    private static List<(double Along, double Radius)> Head(RoundTank tank, double radius)
    {
        var depth = tank.HeadMetres;
        if (depth <= 0 || tank.Head == HeadKind.Cone)
        {
            return [(0, radius), (depth, 0)];
        }

        var ball = (radius * radius + depth * depth) / (2 * depth);
        var opening = depth < radius ? Math.Asin(radius / ball) : Math.PI - Math.Asin(radius / ball);
        return
        [
            .. Enumerable.Range(0, Rings + 1).Select(i =>
            {
                var part = (double)i / Rings;
                var last = i == Rings;
                var (sin, cos) = Math.SinCos(Math.PI / 2 * part);
                var angle = opening * (1 - part);
                return tank.Head == HeadKind.Ellipse
                    ? (depth * sin, last ? 0 : radius * cos)
                    : (depth - ball * (1 - Math.Cos(angle)), last ? 0 : ball * Math.Sin(angle));
            }),
        ];
    }

    private static double Exact(RoundTank tank, double radius) => tank.Head switch
    {
        HeadKind.Ellipse => 2 * Third * Math.PI * radius * radius * tank.HeadMetres,
        HeadKind.Dish => Math.PI * tank.HeadMetres / 6 * (3 * radius * radius + tank.HeadMetres * tank.HeadMetres),
        _ => Third * Math.PI * radius * radius * tank.HeadMetres,
    };

    private static double Chorded(List<(double Along, double Radius)> head) => head.Zip(head.Skip(1), (p, q) =>
        Math.PI * Third * (q.Along - p.Along) * (p.Radius * p.Radius + p.Radius * q.Radius + q.Radius * q.Radius)).Sum();

    private static SpaceVector At((double Along, double Radius) ring, int side, double swell, CylinderLie lie)
    {
        var (sin, cos) = Math.SinCos(2 * Math.PI * (side % Sides) / Sides);
        var (s, a, b) = (ring.Along, ring.Radius * swell * cos, ring.Radius * swell * sin);
        // Each a turn of the three axes, so that outside stays outside.
        return lie switch
        {
            CylinderLie.Along => new SpaceVector(s, a, b),
            CylinderLie.Across => new SpaceVector(b, s, a),
            _ => new SpaceVector(a, b, s),
        };
    }
}
