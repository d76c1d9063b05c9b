using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tests.Linkages;

public sealed class LinkageTrainTests
{
    private const double Steel = LinkageMaterials.SteelShearModulusPascals;

    private static readonly SpaceVector Across = new(0, 1, 0);
    private static readonly SpaceVector Upright = new(0, 0, 1);
    private static readonly SpaceVector Lengthwise = new(1, 0, 0);

    // A cross-shaft, an upright bell-crank with two arms, a spindle that lies lengthwise, and one coupled to it in line.
    private static LinkageTrain Train(double rod1, double rod2, double offset) => new(
        [
            new LinkageShaft { Line = new ShaftLine(default, Across) },
            new LinkageShaft { Line = new ShaftLine(new SpaceVector(0.120, 0.050, 0.020), Upright) },
            new LinkageShaft { Line = new ShaftLine(new SpaceVector(0.200, 0.140, 0.010), Lengthwise), DiameterMetres = 0.008, Spring = new ReturnSpring(0.4, 0.1, 0.090, 1) },
            new LinkageShaft { Line = new ShaftLine(new SpaceVector(0.320, 0.140, 0.010), Lengthwise), DiameterMetres = 0.008, Spring = new ReturnSpring(0.3, 0, 0.080, 1) },
        ],
        [
            new RodMember(0, 1, new Lever(0.040, 0, 0.030), new Lever(0.035, Math.PI / 2, 0.010), rod1),
            new RodMember(1, 2, new Lever(0.030, 0, 0), new Lever(0.032, 0, 0), rod2),
            new CouplingMember(2, 3, offset, 0.100, 0),
        ]);

    private static LinkageTrain AtRest()
    {
        var drawn = Train(1, 1, 0);
        double Fits(int m) => drawn.Members[m] is RodMember r
            ? (drawn.Shafts[r.To].Line.Ball(r.ToLever, 0) - drawn.Shafts[r.From].Line.Ball(r.FromLever, 0)).Length
            : 0;
        return Train(Fits(0), Fits(1), 0);
    }

    [Fact]
    public void Rods_that_drop_on_leave_all_at_rest() => Assert.All(AtRest().Pose(0).Turned, t => Assert.Equal(0, t, 1e-7));

    [Fact]
    public void What_a_setting_does_further_on_is_what_a_difference_says()
    {
        const double step = 1e-7;
        var lengths = AtRest().Members.OfType<RodMember>().Select(r => r.LengthMetres).ToArray();
        var train = AtRest();
        var pose = train.Pose(0.3);

        double Slope(Func<double, LinkageTrain> changed, int shaft) => (changed(step).Pose(0.3).Turned[shaft] - changed(-step).Pose(0.3).Turned[shaft]) / (2 * step);

        for (var shaft = 0; shaft < 4; shaft++)
        {
            Assert.Equal(Slope(s => Train(lengths[0] + s, lengths[1], 0), shaft), pose.Sensitivity(train, 0)[shaft], 1e-3);
            Assert.Equal(Slope(s => Train(lengths[0], lengths[1] + s, 0), shaft), pose.Sensitivity(train, 1)[shaft], 1e-3);
            Assert.Equal(Slope(s => Train(lengths[0], lengths[1], s), shaft), pose.Sensitivity(train, 2)[shaft], 1e-6);
        }
    }

    [Fact]
    public void Beyond_a_rod_that_does_not_reach_nothing_is_known()
    {
        var pose = Train(0.02, 0.1, 0).Pose(0);

        Assert.Equal(0, pose.Locked);
        Assert.True(double.IsNaN(pose.Turned[1]) && double.IsNaN(pose.Turned[3]));
    }

    [Fact]
    public void A_shaft_driven_twice_is_refused() => Assert.Throws<ArgumentException>(() => new LinkageTrain(
        AtRest().Shafts, [new CouplingMember(0, 1, 0, 0, 0), new CouplingMember(0, 1, 0, 0, 0)]));

    [Fact]
    public void A_spindle_winds_up_by_torque_times_length_over_stiffness()
    {
        var train = AtRest();
        var pose = train.Pose(0);
        var loads = new SpringLoads(train, pose);

        // Spring 0.3 N m at 80 mm of the last spindle, which is driven at 0.
        var own = 0.3 * 0.080 / (Steel * Math.PI / 32 * Math.Pow(0.008, 4));
        // The spindle before it carries 0.4 N m over 90 mm and 0.3 N m over the 100 mm to the coupling.
        var before = (0.4 * 0.090 + 0.3 * 0.100) / (Steel * Math.PI / 32 * Math.Pow(0.008, 4));
        Assert.Equal(0.7, loads.Torque(2), 1e-7);
        Assert.Equal(-before - own, loads.Lag(3, 0.080), 1e-9);
        Assert.Equal(-before - own, loads.Lag(3, 0.120), 1e-9); // nothing twists beyond the spring
        Assert.Equal(0, loads.Lag(2, -0.030), 1e-12);           // nor on the side that carries nothing
    }

    [Fact]
    public void The_pedal_does_the_work_the_springs_take()
    {
        var train = AtRest();
        const double step = 1e-5;
        var pose = train.Pose(0.2);
        var energy = Energy(train.Pose(0.2 + step)) - Energy(train.Pose(0.2 - step));

        Assert.Equal(energy / (2 * step), new SpringLoads(train, pose).Torque(0), 1e-5);
    }

    private static double Energy(TrainPose pose) =>
        0.4 * pose.Turned[2] + 0.1 * pose.Turned[2] * pose.Turned[2] / 2 + 0.3 * pose.Turned[3];
}
