using Tickover.Physics.Sending;

namespace Tickover.Physics.Tests.Sending;

public sealed class SenderTests
{
    [Theory]
    [InlineData(0.02, -33.749)]
    [InlineData(0.07, -16.128)]
    [InlineData(0.12, 0)]
    [InlineData(0.22, 33.749)]
    public void The_arm_stands_where_its_sine_says(double level, double degrees)
    {
        var arm = new FloatArm { PivotMetres = 0.12, LengthMetres = 0.18, LowestMetres = 0.02, HighestMetres = 0.22, Family = new SenderFamily(240, 33) };

        Assert.Equal(degrees, double.RadiansToDegrees(arm.Angle(level)), 0.001);
    }

    [Theory]
    [InlineData(NeedleKind.Thermal)]
    [InlineData(NeedleKind.MovingIron)]
    public void A_gauge_with_its_own_sender_shows_the_travel(NeedleKind kind)
    {
        var gauge = new GaugeCircuit { Family = new SenderFamily(240, 33), Kind = kind };

        Assert.All(new[] { 0, 0.25, 0.5, 1 }, t => Assert.Equal(t, gauge.Shown(gauge.Signal(gauge.Family.At(t))), 1e-12));
    }

    // Family decides: open reads empty where empty is the high resistance, and past full where it is the low one; a short the other way round.
    [Theory]
    [InlineData(240, 33, WiringFault.Open, false)]
    [InlineData(73, 10, WiringFault.Short, true)]
    [InlineData(0, 90, WiringFault.Open, true)]
    [InlineData(10, 180, WiringFault.Short, false)]
    public void An_open_or_short_wire_drives_the_needle_over_by_family(double empty, double full, WiringFault fault, bool overFull)
    {
        foreach (var kind in Enum.GetValues<NeedleKind>())
        {
            var gauge = new GaugeCircuit { Family = new SenderFamily(empty, full), Kind = kind, Fault = fault };
            var shown = gauge.Shown(gauge.Signal(gauge.Family.At(0.5)));
            Assert.True(overFull ? shown > 1 : shown < 0, $"{kind}: {shown}");
        }
    }

    [Fact]
    public void A_poor_earth_and_a_low_stabiliser_read_low_and_an_unregulated_one_high()
    {
        var right = new GaugeCircuit { Family = new SenderFamily(240, 33) };
        double At(GaugeCircuit g) => g.Shown(g.Signal(right.Family.At(0.5)));

        Assert.True(At(right with { AddedOhms = 10 }) < 0.48);
        Assert.True(At(right with { SupplyVolts = 9 }) < 0.45);
        Assert.True(At(right with { SupplyVolts = 12 }) > 0.6);
        Assert.Equal(0.5, At(right with { SupplyVolts = 12, Kind = NeedleKind.MovingIron }), 1e-12);
    }

    [Fact]
    public void A_thermal_needle_makes_63_per_cent_in_its_time()
    {
        var pair = Pairs.Car(tau: 10) with { Draw = FuelDraw.None };
        var still = pair with { Left = pair.Left with { SloshDamping = 0.9 }, Pipe = pair.Pipe with { BoreMetres = 1e-4 } };

        var moments = still.Run(RoadTrace.Standing(5).Then(RoadTrace.Steady(40, 0, 1)), (0.012, 0.012));
        double Signal(int i) => Math.Pow(10 / (60 + 240 - 207 * moments.Needles[i]), 2);
        var (start, end) = (Signal(0), Math.Pow(10 / (60 + moments.Ohms[^1]), 2));

        Assert.Equal(1 - Math.Exp(-1), (Signal(152) - start) / (end - start), 0.03);
    }

    [Fact]
    public void Two_tables_of_the_same_tank_are_each_others_inverse()
    {
        var table = LevelTable.FromAreas([(0, 0.02), (0.03, 0.08), (0.2, 0.12)]);

        for (var v = 0.0; v <= table.CapacityCubicMetres; v += 0.001)
        {
            Assert.Equal(v, table.Volume(table.Level(v)), 1e-12);
        }

        Assert.Equal(0.5 * 0.03 * 0.1 + 0.5 * 0.17 * 0.2, table.CapacityCubicMetres, 1e-12);
    }

    [Fact]
    public void A_settled_gauge_gives_its_litres_back()
    {
        var settled = new SettledGauge(Pairs.Car());

        Assert.All(new[] { 0.01, 0.02, 0.03 }, v => Assert.Equal(v, settled.Volume(settled.Needle(v)), 1e-4));
    }
}
