using CsCheck;
using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tests.Linkages;

public sealed class FourBarTests
{
    private static readonly FourBar Norton = new() { CrankMetres = 0.040, CouplerMetres = 0.120, FollowerMetres = 0.080, GroundMetres = 0.100 };

    private static readonly Gen<FourBar> Any = Gen.Select(Gen.Double[0.02, 0.1], Gen.Double[0.05, 0.2], Gen.Double[0.02, 0.1], Gen.Double[0.05, 0.2])
        .Select((a, b, c, d) => new FourBar { CrankMetres = a, CouplerMetres = b, FollowerMetres = c, GroundMetres = d });

    [Fact]
    public void Textbook_example_gives_its_angles_open_and_crossed()
    {
        // Norton, Design of Machinery, example 4-1 (inputs from memory).
        var poses = Norton.At(double.DegreesToRadians(40))!.Value;

        Assert.Equal(57.325, Degrees(poses.Open.FollowerRadians), 0.001);
        Assert.Equal(20.298, Degrees(poses.Open.CouplerRadians), 0.001);
        Assert.Equal(-98.005, Degrees(poses.Crossed.FollowerRadians), 0.001);
        Assert.Equal(-60.978, Degrees(poses.Crossed.CouplerRadians), 0.001);
    }

    [Fact]
    public void Both_assemblies_close_the_loop() => Gen.Select(Any, Gen.Double[-3.1, 3.1]).Sample((bar, crank) =>
    {
        if (bar.At(crank) is not { } poses)
        {
            return true;
        }

        return Closes(bar, crank, poses.Open) && Closes(bar, crank, poses.Crossed)
            && Math.Abs(bar.Constants.Residual(crank, poses.Open.FollowerRadians)) < 1e-9
            && Math.Abs(bar.Constants.Residual(crank, poses.Crossed.FollowerRadians)) < 1e-9;
    });

    [Fact]
    public void The_rate_is_the_slope() => Gen.Select(Any, Gen.Double[-3.1, 3.1]).Sample((bar, crank) =>
    {
        const double step = 1e-6;
        const double squarely = 0.2; // nearer the dead point the difference itself is no good
        if (bar.At(crank) is not { } at || bar.At(crank - step) is not { } before || bar.At(crank + step) is not { } after
            || Math.Abs(Math.Sin(at.Open.FollowerRadians - at.Open.CouplerRadians)) < squarely)
        {
            return true;
        }

        var slope = Math.IEEERemainder(after.Open.FollowerRadians - before.Open.FollowerRadians, 2 * Math.PI) / (2 * step);
        return Math.Abs(slope - bar.Rate(crank, at.Open)) < 1e-5 * (1 + Math.Abs(slope));
    });

    [Fact]
    public void Out_of_reach_there_is_no_pose()
    {
        var bar = new FourBar { CrankMetres = 0.05, CouplerMetres = 0.06, FollowerMetres = 0.02, GroundMetres = 0.1 };

        Assert.Null(bar.At(Math.PI)); // 150 mm to span with 80
        Assert.NotNull(bar.At(0.3));
    }

    [Fact]
    public void Three_positions_fix_the_ratios()
    {
        // Uicker, Pennock and Shigley: y = 1/x over 1 to 2, rounded precision angles (inputs from memory).
        (double, double)[] pairs = [(Radians(36.03), Radians(251.34)), (Radians(75), Radians(300)), (Radians(113.97), Radians(326.94))];

        var k = FreudensteinConstants.Through(pairs)!.Value;

        Assert.Equal(0.403294, k.K1, 1e-5);
        Assert.Equal(-0.403265, k.K2, 1e-5);
        Assert.Equal(-1.013126, k.K3, 1e-5);
        Assert.All(pairs, p => Assert.Equal(0, k.Residual(p.Item1, p.Item2), 1e-12));
    }

    [Fact]
    public void Ratios_come_back_from_the_positions_they_gave()
    {
        var k = Norton.Constants;

        var found = FreudensteinConstants.Through([.. new[] { 0.4, 0.9, 1.6 }.Select(crank => (crank, Norton.At(crank)!.Value.Open.FollowerRadians))])!.Value;

        Assert.Equal(k.K1, found.K1, 1e-9);
        Assert.Equal(k.K2, found.K2, 1e-9);
        Assert.Equal(k.K3, found.K3, 1e-9);
    }

    [Fact]
    public void One_position_thrice_fixes_nothing() => Assert.Null(FreudensteinConstants.Through([(0.4, 1.1), (0.4, 1.1), (0.4, 1.1)]));

    private static bool Closes(FourBar bar, double crank, FourBarPose pose)
    {
        var x = bar.CrankMetres * Math.Cos(crank) + bar.CouplerMetres * Math.Cos(pose.CouplerRadians) - bar.FollowerMetres * Math.Cos(pose.FollowerRadians) - bar.GroundMetres;
        var y = bar.CrankMetres * Math.Sin(crank) + bar.CouplerMetres * Math.Sin(pose.CouplerRadians) - bar.FollowerMetres * Math.Sin(pose.FollowerRadians);
        return Math.Abs(x) + Math.Abs(y) < 1e-8;
    }

    private static double Degrees(double radians) => double.RadiansToDegrees(radians);

    private static double Radians(double degrees) => double.DegreesToRadians(degrees);
}
