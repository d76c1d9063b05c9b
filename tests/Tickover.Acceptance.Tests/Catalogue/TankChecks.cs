using Tickover.Physics.Linkages;
using Tickover.Physics.Tanks;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Partial volumes of round tanks, tilted surfaces, cut corners.</summary>
public static class TankChecks
{
    private const string Jones = "D. Jones, Calculating Tank Volume, table for D 108 in, L 156 in, a 42 in, as quoted in an open library of fluid mechanics' tests";
    private const string Segment = "Circular segment times length, evaluated independently";
    private const string Fish = "Y. Çengel and J. Cimbala, Fluid Mechanics, ex. 3-12";
    private const string Munson = "B. Munson, D. Young and T. Okiishi, Fundamentals of Fluid Mechanics, ex. 2.11";
    private const string Cube = "Inclusion and exclusion of corners, evaluated independently";
    private const double Inch = 0.0254;
    private const double Gallon = 231 * Inch * Inch * Inch;

    public static CheckGroup Group { get; } = new("Tanks", [.. Lying(), .. Ball(), .. Pushed(), .. Corners(), .. Pressed()]);

    private static RoundTank Jones108(HeadKind head, double depth) =>
        new() { DiameterMetres = 108 * Inch, LengthMetres = 156 * Inch, HeadMetres = depth * Inch, Head = head, Lie = CylinderLie.Along };

    private static double Gallons(RoundTank tank, double inches)
    {
        var shape = TankShapes.Cylinder(tank).Shape!;
        return shape.Below(shape.Lowest.Z + (inches / (tank.DiameterMetres / Inch)) * (shape.Highest.Z - shape.Lowest.Z), default).VolumeCubicMetres / Gallon;
    }

    private static IEnumerable<OutsideCheck> Lying()
    {
        (double Depth, double Gallons)[] flat = [(36, 1805.1882880), (84, 5162.8929738)];
        (HeadKind Head, double Depth, double Gallons)[] bulged =
        [
            (HeadKind.Ellipse, 36, 2380.9565416), (HeadKind.Ellipse, 54, 4203.6957699), (HeadKind.Ellipse, 84, 7103.4452359), (HeadKind.Ellipse, 108, 8407.3915399),
            (HeadKind.Cone, 36, 2041.1923581), (HeadKind.Cone, 54, 3648.4906682), (HeadKind.Cone, 84, 6180.5407739), (HeadKind.Cone, 108, 7296.9813365),
            (HeadKind.Dish, 36, 2303.9615117), (HeadKind.Dish, 54, 4094.0256264), (HeadKind.Dish, 84, 6935.1633653), (HeadKind.Dish, 108, 8188.0512528),
        ];
        foreach (var (depth, gallons) in flat)
        {
            yield return Volume("flat ends", depth, gallons, Segment, SourceKind.Derived, () => Gallons(Jones108(HeadKind.Ellipse, 0), depth));
        }

        foreach (var (head, depth, gallons) in bulged)
        {
            yield return Volume(Words(head), depth, gallons, Jones, SourceKind.Published, () => Gallons(Jones108(head, 42), depth));
        }

        yield return Volume("elliptic ends by formula", 84, 7103.4452359, Jones, SourceKind.Published, () =>
            (PartialVolumes.LyingCylinder(108 * Inch, 156 * Inch, 84 * Inch) + PartialVolumes.LyingEllipseHeads(108 * Inch, 42 * Inch, 84 * Inch)) / Gallon) with { Tolerance = 1e-9 };
    }

    private static OutsideCheck Volume(string ends, double depth, double gallons, string source, SourceKind kind, Func<double> ours) => new()
    {
        Subject = FormattableString.Invariant($"lying cylinder 108 in × 156 in, {ends}, {depth} in deep"),
        Quantity = "volume",
        Source = source,
        Kind = kind,
        Published = gallons,
        Unit = "US gal",
        Tolerance = 3e-4,
        Ours = ours,
        Note = "facets",
    };

    private static string Words(HeadKind head) => head switch
    {
        HeadKind.Ellipse => "elliptic ends of 42 in",
        HeadKind.Cone => "conical ends of 42 in",
        _ => "dished ends of 42 in",
    };

    private static IEnumerable<OutsideCheck> Ball() =>
    [
        new OutsideCheck
        {
            Subject = "ball of diameter 1, 0.7 deep",
            Quantity = "volume",
            Source = "The same open library, partly filled ball",
            Kind = SourceKind.Published,
            Published = 0.4105014401,
            Unit = "1",
            Tolerance = 1e-9,
            Ours = () => PartialVolumes.BallCap(0.5, 0.7),
        },
        new OutsideCheck
        {
            Subject = "lying cylinder 40 in × 100 in, elliptic ends of 10 in, 16 in deep",
            Quantity = "volume",
            Source = "Drexel Math Forum, Dr Math 66048",
            Kind = SourceKind.Published,
            Published = 228.7,
            Unit = "US gal",
            Tolerance = 5e-4,
            Ours = () => Gallons(new RoundTank { DiameterMetres = 40 * Inch, LengthMetres = 100 * Inch, HeadMetres = 10 * Inch }, 16),
            Note = "facets",
        },
    ];

    private static IEnumerable<OutsideCheck> Pushed()
    {
        static OutsideCheck Rise(double length, double width, double published) => new()
        {
            Subject = FormattableString.Invariant($"fish tank {length} m along the way, 0 to 90 km/h in 10 s"),
            Quantity = "rise at the back",
            Source = Fish,
            Kind = SourceKind.Published,
            Published = published,
            Unit = "cm",
            Tolerance = 0.01,
            Ours = () => 100 * RiseAtTheBack(length, width),
        };

        yield return Rise(2, 0.6, 25.5);
        yield return Rise(0.6, 2, 7.6);
        yield return new OutsideCheck
        {
            Subject = "fuel tank with a tap 0.5 ft below the resting surface, 0.75 ft along",
            Quantity = "acceleration that bares the tap",
            Source = Munson,
            Kind = SourceKind.Published,
            Published = 21.5,
            Unit = "ft/s²",
            Tolerance = 0.005,
            Ours = () => BaringAcceleration() / 0.3048,
        };
        foreach (var (push, low, high) in new[] { (1.0, 0.0494, 0.1106), (2.0, 0.0188, 0.1412) })
        {
            yield return Side(push, "depth on the inside of the bend", low, 0.3);
            yield return Side(push, "depth on the outside", high, -0.3);
        }
    }

    private static double RiseAtTheBack(double length, double width)
    {
        var tank = TankShapes.Box(new SpaceVector(length, width, 0.8)).Shape!;
        var tilt = Tilt.Pushed(90 / 3.6 / 10, 0, 9.81);
        var level = tank.Filled(length * width * 0.4, tilt);
        return tilt.DepthOver(level, new SpaceVector(-length / 2, 0, 0)) - 0.4;
    }

    // A tank 1.5 ft long, half full: the tap is at its front wall, 0.75 ft from the middle, where the surface falls.
    private static double BaringAcceleration()
    {
        const double foot = 0.3048;
        var tank = TankShapes.Box(new SpaceVector(1.5 * foot, foot, 2 * foot)).Shape!;
        var (low, high) = (0.0, 15.0);
        while (high - low > 1e-9)
        {
            var push = (low + high) / 2;
            var tilt = Tilt.Pushed(push, 0, 32.2 * foot);
            var depth = tilt.DepthOver(tank.Filled(tank.VolumeCubicMetres / 2, tilt), new SpaceVector(0.75 * foot, 0, 0.5 * foot));
            (low, high) = depth > 0 ? (push, high) : (low, push);
        }

        return low;
    }

    private static OutsideCheck Side(double push, string what, double published, double left) => new()
    {
        Subject = FormattableString.Invariant($"box 0.60 m wide, 0.20 m high, 0.08 m deep, pushed at {push} m/s² to the left"),
        Quantity = what,
        Source = "Plane surface square to gravity and push, evaluated independently",
        Kind = SourceKind.Derived,
        Published = published,
        Unit = "m",
        Ours = () =>
        {
            var tilt = Tilt.Pushed(0, push, 9.81);
            var tank = TankShapes.Box(new SpaceVector(0.5, 0.6, 0.2)).Shape!;
            return tilt.DepthOver(tank.Filled(0.5 * 0.6 * 0.08, tilt), new SpaceVector(0, left, 0));
        },
    };

    private static IEnumerable<OutsideCheck> Corners() => new[] { (0.5, 1.0 / 48), (1.0, 1.0 / 6), (1.5, 0.5), (2.0, 5.0 / 6), (2.5, 47.0 / 48) }.Select(row => new OutsideCheck
    {
        Subject = FormattableString.Invariant($"unit cube below x + y + z = {row.Item1}"),
        Quantity = "volume",
        Source = Cube,
        Kind = SourceKind.Derived,
        Published = row.Item2,
        Unit = "m³",
        Tolerance = 1e-12,
        Ours = () => TankShapes.Box(new SpaceVector(1, 1, 1)).Shape!.Moved(new SpaceVector(0.5, 0.5, 0)).Below(row.Item1 / Math.Sqrt(3), new Tilt(1, 1)).VolumeCubicMetres,
    });

    private static IEnumerable<OutsideCheck> Pressed() =>
    [
        new OutsideCheck
        {
            Subject = "trapezium 0.5 m below and 0.8 m above, 0.3 m high, 0.4 m deep, filled to 0.2 m",
            Quantity = "volume",
            Source = "Mean of the parallel sides times height, evaluated independently",
            Kind = SourceKind.Derived,
            Published = 0.4 * 0.2 * (0.5 + 0.7) / 2,
            Unit = "m³",
            Tolerance = 1e-12,
            Ours = () => TankShapes.Prism([new(-0.25, 0), new(0.25, 0), new(0.4, 0.3), new(-0.4, 0.3)], 0.4, OutlineView.Rear).Shape!.Below(0.2, default).VolumeCubicMetres,
        },
    ];
}
