using Tickover.Workshop.Leaks;

namespace Tickover.Workshop.Tests.Leaks;

public sealed class LeakAnalystTests
{
    private const string Plain = """
        {
          "format": "tickover-leak-1", "name": "Marram Six, tank", "volume": { "litres": 50, "within": 2 },
          "panel": { "metal": "steel", "sides": [250, 250], "thickness": 1.5 },
          "gauge": { "unit": "mbar", "error": 0.02 }, "thermometer": { "error": 0.02, "drift": 0.05 }, "barometer": 1013.25,
          "readings": [
            { "minutes": 0, "pressure": 20.0, "temperature": 20.0 }, { "minutes": 5, "pressure": 19.0, "temperature": 20.0 },
            { "minutes": 10, "pressure": 18.0, "temperature": 20.0 }]
        }
        """;

    [Fact]
    public void A_falling_pressure_is_a_leak_with_its_band()
    {
        var analysis = Of(Plain);

        // 50 l × 200 Pa / 600 s = 0.0167 Pa m³/s, and the panels' spring on top.
        Assert.Equal(LeakVerdictKind.Leaks, analysis.Verdict.Kind);
        Assert.True(analysis.Verdict.IsNo);
        Assert.InRange(analysis.Rate.PascalCubicMetresPerSecond, 0.0167, 0.0172);
        Assert.True(analysis.Rate.Low > 0 && analysis.HoleMetres > 0);
    }

    [Fact]
    public void A_tank_that_cooled_is_tight_and_the_smallest_leak_seen_is_told()
    {
        var analysis = Of(Cooled);

        Assert.Equal(LeakVerdictKind.NoneSeen, analysis.Verdict.Kind);
        Assert.False(analysis.Verdict.IsNo);
        Assert.True(analysis.Rate.WithoutTemperature > analysis.Rate.Threshold);
        Assert.Contains("would have been", analysis.Verdict.Heading, StringComparison.Ordinal);
    }

    [Fact]
    public void A_limit_below_the_smallest_leak_seen_cannot_be_told_and_the_time_for_it_is_said()
    {
        var analysis = Of(Cooled.Replace("\"barometer\"", "\"limit\": 0.001, \"barometer\"", StringComparison.Ordinal));

        Assert.Equal(LeakVerdictKind.CannotTell, analysis.Verdict.Kind);
        Assert.True(analysis.Verdict.IsNo);
        Assert.True(analysis.SecondsForLimit > 600);
        Assert.Contains("hours", analysis.Verdict.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rising_pressure_is_no_answer()
    {
        var analysis = Of(Plain.Replace("19.0", "21.0", StringComparison.Ordinal).Replace("18.0", "22.0", StringComparison.Ordinal));

        Assert.Equal(LeakVerdictKind.Gained, analysis.Verdict.Kind);
        Assert.True(analysis.Verdict.IsNo);
        Assert.Contains("warming", analysis.Verdict.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pressure_above_what_the_panel_bears_is_no_whatever_the_curve_says()
    {
        var analysis = Of(Cooled.Replace("\"thickness\": 1.5", "\"thickness\": 0.5", StringComparison.Ordinal));

        Assert.True(analysis.Panel.IsOver);
        Assert.True(analysis.Verdict.IsNo);
        Assert.Contains("most the largest flat panel should bear", analysis.Verdict.Why, StringComparison.Ordinal);
        Assert.Contains("would wreck this tank", LeakWords.Walls(analysis), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_temperature_only_large_leaks_show()
    {
        var without = Of(Plain.Replace(", \"temperature\": 20.0", "", StringComparison.Ordinal).Replace(", \"drift\": 0.05", "", StringComparison.Ordinal));

        Assert.True(without.Rate.SmallestSeen > 5 * Of(Plain).Rate.SmallestSeen);
        Assert.Contains(without.Doubts, d => d.Contains("No temperature was read", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("psi", 6894.757)]
    [InlineData("mmH2O", 9.80665)]
    [InlineData("inH2O", 249.089)]
    [InlineData("inHg", 3386.389)]
    [InlineData("mbar", 100)]
    public void Units_are_what_tables_say(string unit, double pascals) => Assert.Equal(pascals, PressureUnit.Read(unit)!.Pascals, 1e-3 * pascals);

    [Fact]
    public void The_same_test_in_another_unit_says_the_same()
    {
        var kilopascals = Of(Plain.Replace("\"mbar\", \"error\": 0.02", "\"kPa\", \"error\": 0.002", StringComparison.Ordinal)
            .Replace("\"pressure\": 20.0", "\"pressure\": 2.0", StringComparison.Ordinal).Replace("19.0", "1.9", StringComparison.Ordinal).Replace("18.0", "1.8", StringComparison.Ordinal));

        Assert.Equal(Of(Plain).Rate.PascalCubicMetresPerSecond, kilopascals.Rate.PascalCubicMetresPerSecond, 1e-9);
        Assert.Equal(Of(Plain).Rate.SmallestSeen, kilopascals.Rate.SmallestSeen, 1e-9);
    }

    [Theory]
    [InlineData("\"minutes\": 5", "\"minutes\": 0", "readings[1].minutes", "times that rise")]
    [InlineData("\"litres\": 50", "\"litres\": 0", "volume.litres", "0.2 to 400 l")]
    [InlineData("\"unit\": \"mbar\"", "\"unit\": \"mbarr\"", "gauge.unit", "Did you mean \"mbar\"?")]
    [InlineData("\"unit\": \"mbar\"", "\"unit\": \"furlong\"", "gauge.unit", "no unit of pressure")]
    [InlineData("\"pressure\": 19.0", "\"pressure\": \"19\"", "readings[1].pressure", "without quotes")]
    [InlineData("\"pressure\": 19.0, \"temperature\": 20.0", "\"pressure\": 19.0", "readings", "1 of 3 readings have no temperature")]
    [InlineData("\"thickness\": 1.5", "\"thickness\": -1.5", "panel.thickness", "0.2 to 6 mm")]
    [InlineData("\"metal\": \"steel\"", "\"metal\": \"stainles steel\"", "panel.metal", "Did you mean \"stainless steel\"?")]
    [InlineData("\"barometer\": 1013.25", "\"barometer\": 29.9", "barometer", "850 to 1085 mbar")]
    [InlineData("\"error\": 0.02 }, \"therm", "\"error\": 0 }, \"therm", "gauge.error", "Half the gauge's smallest division")]
    public void A_slip_is_said_with_its_place_and_a_way_out(string from, string to, string path, string said)
    {
        var reading = LeakDocument.Read(Plain.Replace(from, to, StringComparison.Ordinal));

        Assert.Null(reading.Sheet);
        Assert.Contains(reading.Faults, f => f.Path.StartsWith(path, StringComparison.Ordinal) && $"{f.Problem} {f.Allowed} {f.WhatToDo}".Contains(said, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{ \"format\": \"tickover-leak-1\" }")]
    [InlineData("{ \"format\": \"tickover-leak-1\", \"readings\": [1, 2], \"gauge\": 3, \"volume\": [] }")]
    public void Nothing_typed_ever_throws(string json) => Assert.NotEmpty(LeakDocument.Read(json).Faults);

    // At 1013.25 + 20 mbar a tenth of a kelvin is 0.352 mbar.
    private static string Cooled => Plain.Replace("19.0, \"temperature\": 20.0", "19.648, \"temperature\": 19.9", StringComparison.Ordinal).Replace("18.0, \"temperature\": 20.0", "19.295, \"temperature\": 19.8", StringComparison.Ordinal);

    private static LeakAnalysis Of(string json)
    {
        var reading = LeakDocument.Read(json);
        Assert.Empty(reading.Faults);
        return LeakAnalyst.Of(reading.Sheet!);
    }
}
