using Tickover.Physics.Flow;
using Tickover.Physics.Linkages;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Four-bars, rods with ball ends, wind-up, expansion, and what a hair of plate angle does at idle.</summary>
public static class LinkageChecks
{
    private const string Norton = "R. L. Norton, Design of Machinery, example 4-1 (inputs from memory), angles worked out independently";
    private const string Synthesis = "J. J. Uicker, G. R. Pennock and J. E. Shigley, Theory of Machines and Mechanisms, synthesis of y = 1/x by Freudenstein's equation (inputs from memory), worked out independently";
    private const string Spatial = "Loop closure of a rod with ball ends between shafts square to each other, evaluated independently";
    private const string Torsion = "J. M. Gere and S. P. Timoshenko, Mechanics of Materials, example of a solid steel bar of 1.5 in, 54 in long, 250 lb ft, G 11.5·10⁶ psi";
    private const string Handbook = "CRC Handbook of Chemistry and Physics, linear expansion of aluminium at 25 °C, 23.1·10⁻⁶/K";
    private const string Tables = "J. M. Gere and S. P. Timoshenko, Mechanics of Materials, appendix H, aluminium alloys 23·10⁻⁶/K";
    private const double Inch = 0.0254;
    private const double PoundForce = 4.4482216152605;

    public static CheckGroup Group { get; } = new("Linkages", [.. FourBars(), .. Ratios(), .. Rods(), .. Bars(), .. Growth(), .. Plates()]);

    private static double Degrees(double radians) => double.RadiansToDegrees(radians);

    private static double Radians(double degrees) => double.DegreesToRadians(degrees);

    private static IEnumerable<OutsideCheck> FourBars()
    {
        static (FourBarPose Open, FourBarPose Crossed) Poses() =>
            new FourBar { CrankMetres = 40, CouplerMetres = 120, FollowerMetres = 80, GroundMetres = 100 }.At(Radians(40))!.Value;

        static OutsideCheck Angle(string which, double published, Func<double> ours) => new()
        {
            Subject = "four-bar 40, 120, 80, 100 mm with the crank at 40°",
            Quantity = which,
            Source = Norton,
            Kind = SourceKind.Derived,
            Published = published,
            Unit = "°",
            Tolerance = 2e-5,
            Ours = ours,
        };

        return
        [
            Angle("follower, open", 57.325, () => Degrees(Poses().Open.FollowerRadians)),
            Angle("coupler, open", 20.298, () => Degrees(Poses().Open.CouplerRadians)),
            Angle("follower, crossed", -98.005, () => Degrees(Poses().Crossed.FollowerRadians)),
            Angle("coupler, crossed", -60.978, () => Degrees(Poses().Crossed.CouplerRadians)),
            Angle("follower of the same four-bar as a rod between parallel shafts", 57.325, () =>
            {
                var upright = new SpaceVector(0, 0, 1);
                var both = new BallRod
                {
                    Driver = new ShaftLine(default, upright),
                    DriverLever = new Lever(40, 0, 0),
                    Driven = new ShaftLine(new SpaceVector(100, 0, 0), upright),
                    DrivenLever = new Lever(80, 0, 0),
                    LengthMetres = 120,
                }.At(Radians(40))!.Value;
                return Degrees(Math.Max(both.First, both.Second));
            }),
        ];
    }

    private static IEnumerable<OutsideCheck> Ratios()
    {
        static FreudensteinConstants Found() => FreudensteinConstants.Through(
            [(Radians(36.03), Radians(251.34)), (Radians(75), Radians(300)), (Radians(113.97), Radians(326.94))])!.Value;

        static OutsideCheck Ratio(string name, double published, Func<double> ours) => new()
        {
            Subject = "four-bar for y = 1/x through 36.03°, 75°, 113.97°",
            Quantity = name,
            Source = Synthesis,
            Kind = SourceKind.Derived,
            Published = published,
            Unit = "1",
            Tolerance = 1e-5,
            Ours = ours,
            Note = "in the form of docs/physics/linkages.md (1)",
        };

        return [Ratio("K1", 0.403294, () => Found().K1), Ratio("K2", -0.403265, () => Found().K2), Ratio("K3", -1.013126, () => Found().K3)];
    }

    private static IEnumerable<OutsideCheck> Rods()
    {
        (double Driver, double Driven)[] rows = [(-30, 32.37650), (-15, 14.17884), (15, -11.81670), (30, -21.84650), (45, -30.32322)];
        return rows.Select(row => new OutsideCheck
        {
            Subject = FormattableString.Invariant($"rod of 108.628 mm between levers of 30 and 35 mm on shafts square to each other, driver at {row.Driver}°"),
            Quantity = "driven lever",
            Source = Spatial,
            Kind = SourceKind.Derived,
            Published = row.Driven,
            Unit = "°",
            Tolerance = 1e-6,
            Ours = () => Degrees(new BallRod
            {
                Driver = new ShaftLine(default, new SpaceVector(0, 0, 1)),
                DriverLever = new Lever(30, Math.PI / 2, 0),
                Driven = new ShaftLine(new SpaceVector(90, 20, 25), new SpaceVector(0, 1, 0)),
                DrivenLever = new Lever(35, 0, 0),
                LengthMetres = 108.6278049,
            }.At(Radians(row.Driver), RodAssembly.Second)!.Value),
        });
    }

    private static IEnumerable<OutsideCheck> Bars() =>
    [
        new OutsideCheck
        {
            Subject = "solid steel bar in torsion",
            Quantity = "angle of twist",
            Source = Torsion,
            Kind = SourceKind.FromMemory,
            Published = 1.62,
            Unit = "°",
            Ours = () => Degrees(Tickover.Physics.Linkages.Torsion.WindUp(
                250 * PoundForce * 12 * Inch, 54 * Inch, 1.5 * Inch, 11.5e6 * PoundForce / (Inch * Inch))),
        },
    ];

    private static IEnumerable<OutsideCheck> Growth()
    {
        static OutsideCheck Of(string source, double published, double tolerance) => new()
        {
            Subject = "1 m of aluminium warmed by 100 K",
            Quantity = "growth",
            Source = source,
            Kind = SourceKind.FromMemory,
            Published = published,
            Unit = "mm",
            Tolerance = tolerance,
            Ours = () => 1000 * LinkageMaterials.Growth(new SpaceVector(1, 0, 0), LinkageMaterials.AluminiumExpansionPerKelvin, 100).Length,
        };

        return [Of(Handbook, 2.31, 1e-6), Of(Tables, 2.3, 0.02)];
    }

    private static IEnumerable<OutsideCheck> Plates()
    {
        const double step = 1e-4;
        var plate = new ThrottlePlate { BoreMetres = 0.040, ClosedAngleRadians = Radians(10), SpindleDiameterMetres = 0 };
        double Slope() => 1e6 * plate.OpenArea(Radians(10 + step)) / step;
        return
        [
            new OutsideCheck
            {
                Subject = "40 mm plate seated at 10°",
                Quantity = "area for a degree from seated",
                Source = "Projected ellipse, worked out independently",
                Kind = SourceKind.Derived,
                Published = 3.9,
                Unit = "mm²/°",
                Tolerance = 0.01,
                Ours = Slope,
            },
            new OutsideCheck
            {
                Subject = "40 mm plate seated at 10° passing 4 kg/h through 6.3 mm²",
                Quantity = "angle that is 10 % of the idle air",
                Source = "Projected ellipse, worked out independently",
                Kind = SourceKind.Derived,
                Published = 0.16,
                Unit = "°",
                Tolerance = 0.03,
                Ours = () => 0.1 * 6.3 / Slope(),
                Note = "by the slope from seated",
            },
        ];
    }
}
