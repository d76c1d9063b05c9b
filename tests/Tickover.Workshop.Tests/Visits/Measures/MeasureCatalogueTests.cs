using System.Text.RegularExpressions;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Tests.Visits.Measures;

public partial class MeasureCatalogueTests
{
    /// <summary>What the set-up card of reference/trade.md 7.2 holds, as far as it is measured.</summary>
    public static TheoryData<string> SetUpCard =>
    [
        "carburettorNumber", "choke", "auxiliaryVenturi", "mainJet", "airCorrector", "emulsionTube", "idleJet", "idleBleed", "pumpJet", "backBleed", "needleValve", "floatDry", "floatWet",
        "fuelPressure", "mixtureTurns", "bypassTurns", "stopTurns", "rodLength", "couplingClearance", "idleSpeed", "idleTiming", "dwell", "plug", "plugGap", "idleAirflow", "airflow1500",
        "airflow2500", "airTemperature", "airPressure", "carbonMonoxide", "lambdaIdle", "damperOil", "filter", "hoseFitted", "usableVolume", "reserve", "altitudeSet",
    ];

    [Theory]
    [MemberData(nameof(SetUpCard))]
    public void What_the_set_up_card_holds_can_be_measured_and_is_a_setting_or_of_the_day(string key)
    {
        var measure = MeasureCatalogue.Find(key);

        Assert.NotNull(measure);
        Assert.True(measure.IsSetting || key is "carburettorNumber" or "airTemperature" or "airPressure", key);
    }

    [Fact]
    public void Keys_are_camel_case_and_stand_once() => Assert.All(MeasureCatalogue.All, m =>
    {
        Assert.Matches(CamelCase(), m.Key);
        Assert.Same(m, MeasureCatalogue.Find(m.Key));
    });

    [Fact]
    public void A_key_that_is_none_finds_nothing()
    {
        Assert.Null(MeasureCatalogue.Find("boost"));
        Assert.Null(MeasureCatalogue.Find(null));
    }

    [Fact]
    public void Every_heading_of_every_stage_has_measures_and_every_measure_a_heading()
    {
        var groups = Enum.GetValues<Stage>().SelectMany(MeasureCatalogue.Of).ToList();

        Assert.Equal(Enum.GetValues<SubStep>(), groups.Select(g => g.Step));
        Assert.All(groups, g => Assert.NotEmpty(g.Measures));
        Assert.Equal(MeasureCatalogue.All.Count, groups.SelectMany(g => g.Measures).Distinct().Count());
    }

    [Fact]
    public void Words_have_no_figures_and_choices_have_at_least_two() => Assert.All(MeasureCatalogue.All, m =>
    {
        Assert.Equal(m.Quantity == Quantity.Choice, m.Choices.Count >= 2);
        Assert.Equal(m.IsNumber, m.SiUnit.Length > 0);
        Assert.Equal(m.IsNumber, m.Usual is not null);
        Assert.True(m.IsNumber || m.Limit is not { CanBeJudged: true }, m.Key);
        Assert.Equal(m.Choices.Count, m.Choices.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    });

    [Fact]
    public void A_limit_is_finite_lies_in_order_and_says_where_it_comes_from() => Assert.All(MeasureCatalogue.All.Where(m => m.Limit is not null), m =>
    {
        var limit = m.Limit!;
        double?[] figures = [limit.LowestSi, limit.HighestSi, limit.DeviationSi, limit.DeviationPart, limit.SpreadSi, limit.SpreadPart];
        Assert.All(figures, f => Assert.True(f is null || double.IsFinite(f.Value)));
        Assert.True(limit.LowestSi is null || limit.HighestSi is null || limit.LowestSi < limit.HighestSi, m.Key);
        Assert.False(string.IsNullOrWhiteSpace(limit.Source));
        Assert.False(string.IsNullOrWhiteSpace(limit.Text));
    });

    [Fact]
    public void The_usual_range_runs_upwards() => Assert.All(MeasureCatalogue.All.Where(m => m.Usual is not null), m => Assert.True(m.Usual!.LowSi < m.Usual.HighSi, m.Key));

    [Fact]
    public void Rounds_are_read_of_places_with_the_engine_running() => Assert.All(MeasureCatalogue.All.Where(m => m.IsRound), m =>
    {
        Assert.NotEqual(PlaceKind.Car, m.Per);
        Assert.True(m.EngineRuns && m.IsSetting);
    });

    [Theory]
    [InlineData("idleAirflow", 4.0 / 3600, 0.5 / 3600)]
    [InlineData("idleAirflow", 7.0 / 3600, 0.7 / 3600)]
    [InlineData("airflow2500", 20.0 / 3600, 1.0 / 3600)]
    public void A_limit_said_as_one_or_the_other_takes_the_wider(string key, double mean, double allowed) =>
        Assert.Equal(allowed, MeasureCatalogue.Find(key)!.Limit!.LargestDeviation(mean)!.Value, 1e-9);

    [GeneratedRegex("^[a-z][A-Za-z0-9]*$", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex CamelCase();
}
