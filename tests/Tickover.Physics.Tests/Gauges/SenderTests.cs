using Tickover.Physics.Gauges;
using Tickover.Physics.Tanks;

namespace Tickover.Physics.Tests.Gauges;

public sealed class SenderTests
{
    private const double Full = 0.070;
    private static readonly SenderFamily Falling = SenderFamily.Of("240-33")!;
    private static readonly SenderFamily Short = SenderFamily.Of("73-10")!;

    private static double Travel(double volume) => volume / Full;

    [Theory]
    [InlineData(SenderFault.None, 0.0, false)]
    [InlineData(SenderFault.Open, 0.0, false)]
    [InlineData(SenderFault.Open, 0.0, true)]
    [InlineData(SenderFault.Short, 0.0, false)]
    [InlineData(SenderFault.AddedResistance, 27.0, true)]
    [InlineData(SenderFault.StuckFloat, 0.4, false)]
    [InlineData(SenderFault.FouledHigh, 0.55, false)]
    [InlineData(SenderFault.FouledLow, 0.45, false)]
    [InlineData(SenderFault.ReversedFloat, 0.0, false)]
    [InlineData(SenderFault.VoltageLow, 0.75, false)]
    [InlineData(SenderFault.StuckNeedle, 0.3, false)]
    [InlineData(SenderFault.SecondInParallel, 0.0, true)]
    public void A_fault_put_in_is_the_one_named(SenderFault fault, double amount, bool inWire)
    {
        var truth = new SenderCase(fault, Falling, Falling, amount, inWire);

        var diagnosis = Diagnose(truth, Falling);

        Assert.Equal(fault, diagnosis.Faults[0].Fault);
        Assert.True(diagnosis.Faults[0].Probability > 0.5, $"{fault} has {diagnosis.Faults[0].Probability:0.00}");
        Assert.Equal(1, diagnosis.Faults.Sum(f => f.Probability), 1e-9);
        Assert.True(diagnosis.Misfit < 1.5);
    }

    [Fact]
    public void Gauge_of_another_family_is_named_with_both()
    {
        var diagnosis = Diagnose(new SenderCase(SenderFault.WrongFamily, Short, Falling), null);

        Assert.Equal(SenderFault.WrongFamily, diagnosis.Faults[0].Fault);
        Assert.Equal((Short, Falling), (diagnosis.Senders[0].Family, diagnosis.Gauges[0].Family));
    }

    [Fact]
    public void Readings_of_no_family_have_a_large_misfit()
    {
        SenderReading[] readings = [new(0.01, 900, 0.1), new(0.035, 500, 0.9), new(0.06, 1200, 0.2)];

        Assert.True(SenderDiagnosis.Of(new SenderSurvey { Readings = readings, Travel = Travel }).Misfit > 2.5);
    }

    [Fact]
    public void Without_the_needle_the_gauge_stays_open()
    {
        SenderReading[] readings = [.. Fillings().Select(v => new SenderReading(v, Falling.OhmsAt(Travel(v)), null))];

        var diagnosis = SenderDiagnosis.Of(new SenderSurvey { Readings = readings, Travel = Travel });

        Assert.Equal(Falling, diagnosis.Senders[0].Family);
        Assert.True(diagnosis.Senders[0].Probability > 0.5);
        Assert.True(diagnosis.Faults.First(f => f.Fault == SenderFault.AddedResistance).Probability > 0.05);
    }

    [Fact]
    public void Sender_of_75_to_10_on_the_large_family_pegs_full_past_two_thirds()
    {
        var gauge = new GaugeLaw { Family = Falling };

        Assert.Equal(0.797, gauge.Free(75), 5e-4);
        Assert.Equal(1, gauge.Free(33), 1e-12);
        Assert.Equal(0.646, (75.0 - 33) / (75 - 10), 5e-4);
    }

    [Fact]
    public void An_open_wire_reads_empty_or_full_by_family()
    {
        Assert.True(new GaugeLaw { Family = Falling }.NeedleAt(double.PositiveInfinity) < 0);
        Assert.True(new GaugeLaw { Family = SenderFamily.Of("0-90")! }.NeedleAt(double.PositiveInfinity) > 1);
        Assert.True(new GaugeLaw { Family = SenderFamily.Of("0-90")! }.NeedleAt(0) <= 0);
    }

    [Fact]
    public void Curve_puts_readings_that_turn_back_in_order()
    {
        var curve = SenderCurve.Of([new(0, 240, null), new(0.01, 200, null), new(0.02, 210, null), new(0.03, 150, null), new(0.04, double.PositiveInfinity, null)])!;

        Assert.True(curve.Falls);
        Assert.Equal(205, curve.Curve.At(0.01), 1e-9);
        Assert.Equal(205, curve.Curve.At(0.02), 1e-9);
        Assert.Equal(5, Math.Abs(curve.WorstOhms), 1e-9);
        Assert.Null(SenderCurve.Of([new(0, 240, null)]));
    }

    [Fact]
    public void A_resistor_in_the_wire_cures_what_lacks_just_that()
    {
        // 10 to 180 Ω gauge, sender that gives 22 Ω less everywhere.
        var gauge = SenderFamily.Of("10-180")!;
        var bench = Bench(MonotoneCurve.Through([(0, 0), (Full, 158)])!, gauge);

        var advised = GaugeCures.Advised(GaugeCures.Of(bench));

        Assert.Equal(GaugeCureKind.Series, advised.Kind);
        Assert.InRange(advised.SeriesOhms, 15, 24);
        Assert.True(advised.RootMeanSquare < 0.05);
    }

    [Fact]
    public void Two_resistors_bring_the_large_family_to_the_small_gauge()
    {
        var bench = Bench(MonotoneCurve.Through([(0, 240), (Full, 33)])!, Short);

        var cures = GaugeCures.Of(bench);

        var asItIs = cures.First(c => c.Kind == GaugeCureKind.AsItIs).RootMeanSquare;
        Assert.True(cures[0].RootMeanSquare < 0.5 * asItIs);
        Assert.All(cures, c => Assert.True(Math.Abs(c.Worst.Error) >= c.RootMeanSquare));
    }

    [Fact]
    public void No_resistor_cures_a_sender_that_runs_the_other_way()
    {
        var bench = Bench(MonotoneCurve.Through([(0, 90), (Full, 0)])!, SenderFamily.Of("0-90")!);

        Assert.True(GaugeCures.Of(bench)[0].RootMeanSquare > 0.25);
    }

    [Fact]
    public void A_bend_brings_back_an_arm_that_was_bent()
    {
        var arm = FloatArm.Between(0.12, 0.18, 0.02, 0.22);
        var table = StrappingTable.FromFill([new(0, 0.02), new(Full, 0.22)]).Table!;
        var bent = double.DegreesToRadians(8);
        var sender = Falling;
        double Ohms(double volume)
        {
            var (low, high) = (arm.AngleAt(0.02), arm.AngleAt(0.22));
            return sender.OhmsAt(Math.Clamp((arm.AngleAt(table.DipAt(volume)) - bent - low) / (high - low), 0, 1));
        }

        var curve = MonotoneCurve.Through(Enumerable.Range(0, 29).Select(i => (X: Full * i / 28, Y: Ohms(Full * i / 28))))!;
        var cures = GaugeCures.Of(new GaugeBench { Sender = curve, Gauge = new GaugeLaw { Family = sender }, EmptyCubicMetres = 0, FullCubicMetres = Full, Arm = arm, Table = table });

        var bend = cures.First(c => c.Kind == GaugeCureKind.Bend);
        Assert.InRange(double.RadiansToDegrees(bend.BendRadians), 4, 10);
        Assert.True(bend.RootMeanSquare < 0.6 * cures.First(c => c.Kind == GaugeCureKind.AsItIs).RootMeanSquare);
    }

    [Fact]
    public void Arm_follows_its_angles()
    {
        var arm = FloatArm.Between(0.12, 0.18, 0.02, 0.22);

        Assert.Equal(-33.749, double.RadiansToDegrees(arm.AngleAt(0.02)), 5e-4);
        Assert.Equal(0.5, arm.TravelAt(0.12), 1e-12);
        Assert.Equal(1, arm.TravelAt(0.3));
    }

    private static GaugeBench Bench(MonotoneCurve sender, SenderFamily gauge) => new()
    {
        Sender = sender,
        Gauge = new GaugeLaw { Family = gauge },
        EmptyCubicMetres = 0,
        FullCubicMetres = Full,
    };

    private static double[] Fillings() => [0.0, 0.01, 0.02, 0.03, 0.04, 0.05, 0.06, 0.07];

    private static SenderDiagnosis Diagnose(SenderCase truth, SenderFamily? known) => SenderDiagnosis.Of(new SenderSurvey
    {
        Readings = [.. Fillings().Select(v => new SenderReading(v, truth.OhmsAt(Travel(v)), truth.NeedleAt(Travel(v))))],
        Travel = Travel,
        TravelDeviation = 0.05,
        Sender = known,
        Gauge = known,
    });
}
