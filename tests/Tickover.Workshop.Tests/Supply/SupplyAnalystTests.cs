using System.Text.Json.Nodes;
using Tickover.Physics.Supply;
using Tickover.Workshop.Supply;
using Tickover.Workshop.Supply.Working;

namespace Tickover.Workshop.Tests.Supply;

public sealed class SupplyAnalystTests
{
    [Fact]
    public void The_sample_carries_its_engine()
    {
        var analysis = SupplySamples.Analysis;

        Assert.True(analysis.Carries, analysis.Verdict);
        Assert.All(analysis.Cases, one => Assert.Equal(SupplyEnding.Converged, one.Point.Ending));
        Assert.Contains("carries the engine", analysis.Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void The_demand_follows_from_power_and_consumption()
    {
        // 110 kW × 0.33 kg/kWh = 36.3 kg/h.
        var analysis = SupplySamples.With(document => document["engine"] = JsonNode.Parse("{ \"power\": 110 }"));

        Assert.Equal(36.3 / 3600, analysis.Supply.Engine.FullLoadKilogramsPerSecond, 9);
        Assert.Equal(analysis.Supply.Engine.FullLoadKilogramsPerSecond, analysis.Of(SupplyCaseKind.FullLoad).Point.Valves.Sum(valve => valve.MassFlow), 9);
    }

    [Fact]
    public void A_weak_pump_does_not_carry_it_and_the_words_say_so()
    {
        var analysis = SupplySamples.With(document =>
            SupplySamples.Part(document, "pump")["curve"] = JsonNode.Parse("[{ \"flow\": 0, \"pressure\": 0.12 }, { \"flow\": 0.5, \"pressure\": 0 }]"));
        var flow = analysis.Findings.Single(finding => string.Equals(finding.Heading, "Flow, full load", StringComparison.Ordinal));

        Assert.False(analysis.Carries);
        Assert.Equal(SupplyStanding.Short, flow.Standing);
        Assert.Contains("draws air after", flow.Words, StringComparison.Ordinal);
        Assert.StartsWith("This supply does not carry the engine. Not enough:", analysis.Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_much_pressure_floods()
    {
        var analysis = SupplySamples.With(document =>
            SupplySamples.Part(document, "pump")["curve"] = JsonNode.Parse("[{ \"flow\": 0, \"pressure\": 1.5 }, { \"flow\": 2, \"pressure\": 0.5 }]"));

        Assert.Equal(SupplyStanding.Short, analysis.Findings.Single(finding => string.Equals(finding.Heading, "Flooding", StringComparison.Ordinal)).Standing);
    }

    [Fact]
    public void Winter_fuel_on_a_hot_day_has_less_to_spare_before_it_boils()
    {
        var winter = SupplySamples.With(document => document["fuel"]!["vapourPressure"] = 95);

        Assert.True(
            winter.Of(SupplyCaseKind.Hot).Point.WorstVapour.VapourMarginPascals < SupplySamples.Analysis.Of(SupplyCaseKind.Hot).Point.WorstVapour.VapourMarginPascals);
        Assert.Equal(SupplyStanding.Short, winter.Findings.Single(finding => string.Equals(finding.Heading, "Boiling in the float chamber", StringComparison.Ordinal)).Standing);
    }

    [Fact]
    public void Readings_with_little_flow_behind_the_filter_point_to_it()
    {
        var diagnosis = SupplySamples.Analysis.Diagnosis;

        Assert.NotNull(diagnosis);
        Assert.Equal(SupplyFaultKind.FilterLoaded, diagnosis.Causes[0].Kind);
        Assert.Equal(1, diagnosis.Causes.Sum(cause => cause.Probability), 9);
    }

    [Fact]
    public void A_flow_read_below_the_need_does_not_carry_the_engine_whatever_is_described()
    {
        var analysis = SupplySamples.With(document => document["readings"]!["flowAtChamber"] = 0.7); // need: 51.3 l/h, 0.86 l/min

        Assert.False(analysis.Carries);
        Assert.Contains("open flow as read", analysis.Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_diagnosed_without_readings() =>
        Assert.Null(SupplySamples.With(document => document.Remove("readings")).Diagnosis);

    [Fact]
    public void Every_part_has_a_working_that_names_its_equations()
    {
        foreach (var one in SupplySamples.Analysis.Cases)
        {
            Assert.All(one.Point.Parts, part => Assert.All(PartWorking.Of(SupplySamples.Tern, one, part), step => Assert.StartsWith("supply (", step.Equation, StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void The_coarsest_filter_is_a_tenth_of_the_smallest_jet()
    {
        var coarse = SupplySamples.With(document => SupplySamples.Part(document, "filter")["fineness"] = 100);
        var finding = coarse.Findings.Single(each => string.Equals(each.Heading, "Filter against the smallest jet", StringComparison.Ordinal));

        Assert.Equal(SupplyStanding.Close, finding.Standing);
        Assert.Contains("45\u2009µm", finding.Words, StringComparison.Ordinal);
    }
}
