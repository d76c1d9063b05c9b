using Tickover.Physics.Gauges;
using Tickover.Physics.Sending;

namespace Tickover.Physics.Tests.Sending;

public sealed class SenderAndGaugeTests
{
    [Theory]
    [InlineData(0.02, -33.749)]
    [InlineData(0.07, -16.128)]
    [InlineData(0.12, 0)]
    [InlineData(0.17, 16.128)]
    [InlineData(0.22, 33.749)]
    public void The_arm_turns_by_the_arcsine(double level, double degrees)
    {
        var arm = FloatArm.Between(0.12, 0.18, 0.02, 0.22);

        Assert.Equal(degrees, double.RadiansToDegrees(arm.AngleAt(level)), 5e-4);
    }

    [Fact]
    public void Stops_hold_the_arm_and_a_reversed_one_runs_backwards()
    {
        var arm = FloatArm.Between(0.12, 0.18, 0.05, 0.2);

        Assert.Equal(0, arm.TravelAt(0));
        Assert.Equal(1, arm.TravelAt(0.25));
        Assert.Equal(1 - arm.TravelAt(0.1), (arm with { Reversed = true }).TravelAt(0.1), 1e-12);
    }

    [Theory]
    [InlineData(GaugeMovement.Thermal)]
    [InlineData(GaugeMovement.MovingIron)]
    public void A_healthy_circuit_shows_both_ends_and_rises_between(GaugeMovement movement)
    {
        var circuit = new GaugeCircuit { Sender = SenderFamily.Of("73-10")!, Movement = movement };

        var shown = Enumerable.Range(0, 11).Select(k => circuit.NeedleAt(circuit.Sender.OhmsAt(k / 10.0))).ToArray();

        Assert.Equal(0, shown[0], 1e-12);
        Assert.Equal(1, shown[10], 1e-12);
        Assert.All(shown.Zip(shown.Skip(1)), p => Assert.True(p.Second > p.First));
    }

    [Fact]
    public void A_winding_shaped_for_a_heated_strip_moves_its_needle_evenly_and_an_even_one_does_not()
    {
        var shaped = new GaugeCircuit { Sender = SenderFamily.Wound([275, 91, 52, 32, 20]), GaugeOhms = 65 };
        var even = shaped with { Sender = SenderFamily.Wound([275, 20]) };

        Assert.All(new[] { 0.0, 0.25, 0.5, 0.75, 1 }, t => Assert.Equal(t, shaped.NeedleAt(shaped.Sender.OhmsAt(t)), 0.01));
        Assert.Equal(71.5, shaped.Sender.OhmsAt(0.375), 1e-9);
        Assert.Equal(275, shaped.Sender.OhmsAt(-0.1), 1e-9);
        Assert.Equal(147.5, even.Sender.OhmsAt(0.5), 1e-9);
        Assert.Equal(0.104, even.NeedleAt(147.5), 0.001);
    }

    [Theory]
    [InlineData(240, 33, WireFault.Open, -1)]
    [InlineData(240, 33, WireFault.Short, 1)]
    [InlineData(0, 90, WireFault.Open, 1)]
    [InlineData(10, 180, WireFault.Open, 1)]
    [InlineData(10, 180, WireFault.Short, -1)]
    public void An_open_wire_reads_empty_where_empty_is_the_high_resistance(double empty, double full, WireFault fault, int end)
    {
        var circuit = new GaugeCircuit { Sender = new SenderFamily(empty, full), Movement = GaugeMovement.MovingIron, Fault = fault };

        var needle = circuit.NeedleAt(circuit.Sender.OhmsAt(0.5));

        Assert.True(end < 0 ? needle <= 0 : needle >= 1, $"{needle}");
    }

    [Fact]
    public void A_bad_earth_makes_a_gauge_read_low_where_empty_is_the_high_resistance()
    {
        var good = new GaugeCircuit { Sender = SenderFamily.Of("240-33")! };

        Assert.True((good with { SeriesOhms = 10 }).NeedleAt(100) < good.NeedleAt(100));
    }

    [Fact]
    public void Volts_move_a_heated_strip_and_not_the_iron()
    {
        var strip = new GaugeCircuit { Sender = SenderFamily.Of("240-33")! };
        var iron = strip with { Movement = GaugeMovement.MovingIron };

        Assert.True((strip with { Volts = 12 }).NeedleAt(100) > strip.NeedleAt(100) + 0.1);
        Assert.Equal(iron.NeedleAt(100), (iron with { Volts = 12 }).NeedleAt(100), 1e-12);
    }

    [Fact]
    public void A_needle_goes_63_percent_of_its_way_in_its_lag()
    {
        var tanks = TestTanks.Plain() with { Gauge = new FuelGauge { Circuit = new GaugeCircuit { Sender = SenderFamily.Of("240-33")! }, LagSeconds = 12 } };

        var run = tanks.Run(RoadTrace.Standing(12), (0.03, 0.03), 1, needle: 0).Moments;

        Assert.Equal((1 - Math.Exp(-1)) * tanks.NeedleAtRest(0.06), run[^1].Needle, 1e-9);
    }

    [Fact]
    public void The_march_shows_the_ohms_of_the_arm()
    {
        var tanks = TestTanks.Plain();

        var moment = tanks.Run(RoadTrace.Standing(1), (0.02, 0.02), 1).Moments[^1];

        Assert.Equal(tanks.Gauge.Circuit.Sender.OhmsAt(tanks.Sender.Arm.TravelAt(0.02 / 0.06)), moment.Ohms, 1e-9);
        Assert.Equal(tanks.Gauge.Circuit.NeedleAt(moment.Ohms), moment.Needle, 1e-6);
    }

    [Fact]
    public void A_float_in_the_middle_does_not_mind_a_bend_and_one_outboard_does()
    {
        var pinched = TestTanks.Pipe(1e9);
        var middle = TestTanks.Plain(pipe: pinched);
        var outboard = middle with { Sender = middle.Sender with { Place = new TankPlace(TankSide.Left, 0, 0.1, 0) } };
        var bend = new RoadTrace(0.01, Enumerable.Repeat(new RoadSample(0, 2, RoadSample.Gravity), 100));

        Assert.Equal(0.5, middle.Run(bend, (0.03, 0.03), 0.5).Moments[^1].SenderLevelMetres, 1e-4);
        Assert.Equal(0.5 - 0.1 * 2 / RoadSample.Gravity, outboard.Run(bend, (0.03, 0.03), 0.5).Moments[^1].SenderLevelMetres, 1e-4);
    }

    [Fact]
    public void Two_senders_cancel_what_a_bend_does_to_one()
    {
        var one = TestTanks.Plain(pipe: TestTanks.Pipe(20, friction: 0.03));
        var two = one with { SecondSender = new TankSender(new TankPlace(TankSide.Right, 0, 0, 0), one.Sender.Arm) };
        var bend = new RoadTrace(0.01, Enumerable.Repeat(new RoadSample(0, 3, RoadSample.Gravity), 3000));

        double Swing(TwoTanks tanks) => Math.Abs(tanks.Run(bend, (0.03, 0.03), 1).Moments[^1].Ohms - tanks.Run(bend, (0.03, 0.03), 1).Moments[0].Ohms);

        Assert.True(Swing(two) < 0.1 * Swing(one), $"{Swing(two)} {Swing(one)}");
    }

    [Fact]
    public void The_lamp_lights_when_a_bend_takes_fuel_from_under_the_float()
    {
        var tanks = TestTanks.Plain() with { Sender = new TankSender(new TankPlace(TankSide.Left, 0, 0.1, 0), FloatArm.Between(0.5, 0.8, 0, 1)) };
        var bend = new RoadTrace(0.01, Enumerable.Repeat(new RoadSample(0, 4, RoadSample.Gravity), 500));

        Assert.False(tanks.Run(RoadTrace.Standing(5), (0.009, 0.009), 1).Moments[^1].Lamp);
        Assert.True(tanks.Run(bend, (0.009, 0.009), 1).Moments[^1].Lamp);
    }
}
