using Tickover.Physics.Supply;
using Kind = Tickover.Physics.Supply.SupplyReadingKind;

namespace Tickover.Physics.Tests.Supply;

public sealed class SupplyDiagnosticianTests
{
    private static readonly SupplyTest Test = new() { Line = Lines.Three(), Duty = Lines.Duty(Lines.Three(), 0), FilterName = "filter" };

    private static Dictionary<Kind, double> Good { get; } = new(SupplyDiagnostician.Diagnose(Test, new Dictionary<Kind, double>()).Expected);

    [Fact]
    public void With_nothing_read_the_causes_are_the_priors_and_a_look_is_named()
    {
        var diagnosis = SupplyDiagnostician.Diagnose(Test, new Dictionary<Kind, double>());

        Assert.Equal(1, diagnosis.Causes.Sum(cause => cause.Probability), 1e-9);
        Assert.Equal(SupplyFaultKind.None, diagnosis.Causes[0].Kind);
        Assert.NotNull(diagnosis.Next);
        Assert.True(diagnosis.NextBits > 0.2);
        Assert.DoesNotContain(diagnosis.Causes, cause => cause.Kind is SupplyFaultKind.RegulatorLow or SupplyFaultKind.ReturnWide);
    }

    [Fact]
    public void Good_readings_all_round_say_that_nothing_is_wrong()
    {
        var diagnosis = SupplyDiagnostician.Diagnose(Test, Good);

        Assert.Equal(SupplyFaultKind.None, diagnosis.Causes[0].Kind);
        Assert.True(diagnosis.Causes[0].Probability > 0.8);
        Assert.True(diagnosis.Misfit < 0.5);
    }

    [Fact]
    public void A_loaded_filter_shows_in_the_two_flows()
    {
        // The filter at twelve times its resistance, which is none of the sizes weighed; readings of that line itself.
        var line = Test.Line with { Parts = [.. Test.Line.Parts.Select(part => part is FuelFilter filter ? filter with { Loading = 12 } : part)] };
        var loaded = SupplyDiagnostician.Diagnose(Test with { Line = line }, new Dictionary<Kind, double>()).Expected;

        var diagnosis = SupplyDiagnostician.Diagnose(Test, new Dictionary<Kind, double>(loaded));

        Assert.True(loaded[Kind.FlowAtChamber] < 0.8 * Good[Kind.FlowAtChamber]);
        Assert.Equal(SupplyFaultKind.FilterLoaded, diagnosis.Causes[0].Kind);
        Assert.True(diagnosis.Causes[0].Probability > 0.6);
    }

    [Fact]
    public void Much_suction_and_little_flow_say_narrow_before_the_pump_and_ask_for_what_parts_it_from_the_vent()
    {
        var readings = new Dictionary<Kind, double>
        {
            [Kind.FlowAtChamber] = 0.8 * Good[Kind.FlowAtChamber],
            [Kind.FlowBeforeFilter] = 0.8 * Good[Kind.FlowBeforeFilter],
            [Kind.Suction] = Good[Kind.Suction] + 6_000,
        };

        var diagnosis = SupplyDiagnostician.Diagnose(Test, readings);

        Assert.Contains(diagnosis.Causes[0].Kind, new[] { SupplyFaultKind.SuctionRestricted, SupplyFaultKind.VentStopped });
        Assert.True(diagnosis.Causes.Take(2).Sum(cause => cause.Probability) > 0.9);
        Assert.Equal(SupplyCheckKind.OpenFillerCap, diagnosis.Next);
    }

    [Fact]
    public void A_pressure_that_sinks_when_the_pump_stops_is_pump_valves_or_a_float_valve_and_the_hose_is_shut_to_tell()
    {
        var readings = new Dictionary<Kind, double> { [Kind.PressureHeld] = 0.2, [Kind.DeadHead] = 0.9 * Good[Kind.DeadHead] };

        var diagnosis = SupplyDiagnostician.Diagnose(Test, readings);

        Assert.True(diagnosis.Causes.Where(cause => cause.Kind is SupplyFaultKind.PumpValvesLeak or SupplyFaultKind.FloatValveLeaks).Sum(cause => cause.Probability) > 0.9);
        Assert.Equal(SupplyCheckKind.ShutBehindPump, diagnosis.Next);
    }

    [Fact]
    public void A_low_voltage_is_not_blamed_on_the_pump()
    {
        var readings = new Dictionary<Kind, double>
        {
            [Kind.DeadHead] = 0.45 * Good[Kind.DeadHead],
            [Kind.FlowAtChamber] = 0.6 * Good[Kind.FlowAtChamber],
            [Kind.PumpVolts] = 8.6,
        };

        Assert.Equal(SupplyFaultKind.LowVoltage, SupplyDiagnostician.Diagnose(Test, readings).Causes[0].Kind);
    }

    [Fact]
    public void Readings_no_cause_explains_are_said_to_fit_nothing()
    {
        var readings = new Dictionary<Kind, double>(Good) { [Kind.DeadHead] = 3 * Good[Kind.DeadHead] };

        Assert.True(SupplyDiagnostician.Diagnose(Test, readings).Misfit > 3);
    }

    [Fact]
    public void A_line_without_a_pump_cannot_be_diagnosed()
    {
        var line = new SupplyLine { Parts = [new PipeRun { Name = "pipe", BoreMetres = 0.008, LengthMetres = 1 }, Lines.Valve("valve", "pipe")] };

        Assert.Contains((Test with { Line = line, FilterName = null, Duty = Lines.Duty(line, 0) }).Faults(), fault => fault.Contains("no pump", StringComparison.Ordinal));
    }
}
