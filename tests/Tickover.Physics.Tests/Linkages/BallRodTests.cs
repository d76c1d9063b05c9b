using CsCheck;
using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tests.Linkages;

public sealed class BallRodTests
{
    private const double Step = 1e-6;
    private const double Squarely = 0.2; // nearer the dead point differences are no good

    // Arm (0, 30, 0) on z, arm (0, 0, 35) on y at (90, 20, 25), rod 108.6278049, all mm.
    private static readonly BallRod Spatial = new()
    {
        Driver = new ShaftLine(default, new SpaceVector(0, 0, 1)),
        DriverLever = new Lever(0.030, Math.PI / 2, 0),
        Driven = new ShaftLine(new SpaceVector(0.090, 0.020, 0.025), new SpaceVector(0, 1, 0)),
        DrivenLever = new Lever(0.035, 0, 0),
        LengthMetres = 0.1086278049,
    };

    private static readonly Gen<BallRod> Any = Gen.Select(Line, Arm, Line, Arm, Gen.Double[0.05, 0.25])
        .Select((line1, arm1, line2, arm2, length) => new BallRod { Driver = line1, DriverLever = arm1, Driven = line2, DrivenLever = arm2, LengthMetres = length });

    private static Gen<SpaceVector> Place => Gen.Select(Gen.Double[-0.1, 0.1], Gen.Double[-0.1, 0.1], Gen.Double[-0.1, 0.1]).Select((x, y, z) => new SpaceVector(x, y, z));

    private static Gen<ShaftLine> Line => Gen.Select(Place, Place.Where(d => d.Length > 0.01)).Select((at, direction) => new ShaftLine(at, direction));

    private static Gen<Lever> Arm => Gen.Select(Gen.Double[0.02, 0.06], Gen.Double[-3.1, 3.1], Gen.Double[-0.05, 0.05]).Select((length, clamp, along) => new Lever(length, clamp, along));

    [Fact]
    public void Parallel_shafts_give_the_four_bar_exactly()
    {
        // On upright shafts lever angles begin ahead, x; Norton's line of the shafts.
        var rod = new BallRod
        {
            Driver = new ShaftLine(default, new SpaceVector(0, 0, 1)),
            DriverLever = new Lever(0.040, 0, 0),
            Driven = new ShaftLine(new SpaceVector(0.100, 0, 0), new SpaceVector(0, 0, 1)),
            DrivenLever = new Lever(0.080, 0, 0),
            LengthMetres = 0.120,
        };

        var (first, second) = rod.At(double.DegreesToRadians(40))!.Value;

        Assert.Equal([-98.00496, 57.32488], new[] { first, second }.Select(double.RadiansToDegrees).Order().ToArray(), Near);
    }

    [Theory]
    [InlineData(-30, 32.37650)]
    [InlineData(-15, 14.17884)]
    [InlineData(15, -11.81670)]
    [InlineData(30, -21.84650)]
    [InlineData(45, -30.32322)]
    public void Shafts_square_to_each_other_follow_the_computed_set(double driver, double driven)
    {
        var both = Spatial.At(double.DegreesToRadians(driver))!.Value;

        Assert.Contains(new[] { both.First, both.Second }, r => Math.Abs(double.RadiansToDegrees(r) - driven) < 1e-5);
    }

    [Fact]
    public void At_rest_the_rod_that_just_drops_on_turns_nothing()
    {
        Assert.Equal(Spatial.LengthMetres, Spatial.Distance(0, 0), 1e-10);
        var both = Spatial.At(0)!.Value;
        Assert.Equal(0, Math.Min(Math.Abs(both.First), Math.Abs(both.Second)), 1e-8);
    }

    [Fact]
    public void Both_assemblies_hold_the_balls_apart_by_the_rod() => Gen.Select(Any, Gen.Double[-3.1, 3.1]).Sample((rod, turn) =>
        rod.At(turn) is not { } both
        || (Math.Abs(rod.Distance(turn, both.First) - rod.LengthMetres) < 1e-8 && Math.Abs(rod.Distance(turn, both.Second) - rod.LengthMetres) < 1e-8));

    [Fact]
    public void Rates_are_the_slopes() => Gen.Select(Any, Gen.Double[-3.1, 3.1]).Sample((rod, turn) =>
    {
        double? At(double phi, double longer) => (rod with { LengthMetres = rod.LengthMetres + longer }).At(phi, RodAssembly.First);
        if (At(turn, 0) is not { } psi || At(turn - Step, 0) is not { } before || At(turn + Step, 0) is not { } after
            || At(turn, -Step / 10) is not { } shorter || At(turn, Step / 10) is not { } longer)
        {
            return true;
        }

        var rates = rod.Rates(turn, psi);
        return Math.Abs(rates.DrivenSine) < Squarely
            || (Same(Math.IEEERemainder(after - before, 2 * Math.PI) / (2 * Step), rates.DrivenPerDriver)
                && Same(Math.IEEERemainder(longer - shorter, 2 * Math.PI) / (Step / 5), rates.DrivenPerMetre));
    });

    [Fact]
    public void A_misfit_taken_off_the_rod_lets_it_go_on() => Gen.Select(Any, Gen.Double[-3.1, 3.1]).Sample((rod, turn) =>
    {
        const double Overdone = 1e-9;
        var misfit = rod.Misfit(turn);
        var mended = rod with { LengthMetres = rod.LengthMetres - misfit - Math.Sign(misfit) * Overdone };

        // with its ball on the driven shaft's axis one length alone will do, and what was overdone is too much
        return rod.At(turn) is null
            ? misfit != 0 && (mended.At(turn) is not null || Math.Abs(mended.Misfit(turn)) < 1.001 * Overdone)
            : Math.Abs(misfit) < 1e-12;
    });

    [Fact]
    public void In_line_with_the_driving_lever_the_rate_goes_through_zero()
    {
        // Driving lever and rod stretched out along x: over centre.
        var rod = new BallRod
        {
            Driver = new ShaftLine(default, new SpaceVector(0, 0, 1)),
            DriverLever = new Lever(0.040, 0, 0),
            Driven = new ShaftLine(new SpaceVector(0.150, -0.050, 0), new SpaceVector(0, 0, 1)),
            DrivenLever = new Lever(0.050, Math.PI / 2, 0),
            LengthMetres = 0.110,
        };
        double Rate(double turn) => rod.Rates(turn, rod.At(turn)!.Value is var both && Math.Abs(both.First) < Math.Abs(both.Second) ? both.First : both.Second).DrivenPerDriver;

        Assert.Equal(0, Rate(0), 1e-6);
        Assert.True(Rate(-0.1) * Rate(0.1) < 0);
    }

    private static bool Same(double slope, double rate) => Math.Abs(slope - rate) < 1e-4 * (1 + Math.Abs(rate));

    private static bool Near(double a, double b) => Math.Abs(a - b) < 1e-5;
}
