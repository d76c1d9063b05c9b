using Tickover.Physics;
using Tickover.Workshop.Walls;

namespace Tickover.Workshop.Tests.Walls;

public sealed class WallAnalystTests
{
    [Fact]
    public void A_sound_sheet_is_surveyed_again_at_half_the_time_left()
    {
        var analysis = WallSamples.Analysis(WallSamples.Plain.Replace("\"age\": 20", "\"age\": 20, \"surveyed\": \"2026-05-14\"", StringComparison.Ordinal));

        Assert.Equal(WallVerdictKind.SurveyAgain, analysis.Verdict.Kind);
        Assert.False(analysis.Verdict.IsNo);
        Assert.Equal(new DateOnly(2031, 5, 14), analysis.Verdict.AgainOn);
        Assert.Equal(5, analysis.Verdict.AgainInYears);
        Assert.Equal(ValidityKind.Inside, analysis.Zones.Single().Validity.Kind);
    }

    [Fact]
    public void The_deepest_not_read_is_deeper_than_the_readings_promise()
    {
        var zone = WallSamples.Analysis(WallSamples.Plain).Zones.Single();

        Assert.Equal(12, zone.Read);
        Assert.Equal(12, zone.PatchesNotRead, 1e-9);
        Assert.InRange(zone.Unseen!.Value.Middle, 0.13, 0.20);
        Assert.True(zone.Unseen.Value.High > zone.Deepest!.Reading.DepthMillimetres);
    }

    [Fact]
    public void Pads_are_estimated_on_their_own()
    {
        var analysis = WallSamples.Analysis(WallSamples.Plain
            .Replace("\"age\": 20", "\"age\": 20, \"pads\": [{ \"name\": \"strap\", \"from\": [100, 0], \"to\": [150, 200] }]", StringComparison.Ordinal)
            .Replace("0.14", "0.34", StringComparison.Ordinal).Replace("0.10, 0.16", "0.41, 0.16", StringComparison.Ordinal).Replace("[null, null, 0.11", "[null, null, 0.29", StringComparison.Ordinal));

        Assert.Equal([ZoneKind.Pad, ZoneKind.Open], analysis.Zones.Select(z => z.Kind));
        Assert.True(analysis.Zones[0].Unseen!.Value.Middle > 1.5 * analysis.Zones[1].Unseen!.Value.Middle);
        Assert.Equal(100, analysis.Zones[0].AreaSquareCentimetres, 1e-9);
    }

    [Fact]
    public void Two_readings_under_a_pad_ask_for_more_there()
    {
        var analysis = WallSamples.Analysis(WallSamples.Plain.Replace("\"age\": 20", "\"age\": 20, \"pads\": [{ \"name\": \"strap\", \"from\": [250, 0], \"to\": [300, 200] }]", StringComparison.Ordinal));

        Assert.Equal(WallVerdictKind.ReadMore, analysis.Verdict.Kind);
        Assert.True(analysis.Verdict.IsNo);
        Assert.Contains("1 more measured depth wanted", analysis.Verdict.Why, StringComparison.Ordinal);
        Assert.Equal(["F2", "F4"], analysis.Verdict.ReadNext.Take(2).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.Empty(analysis.Course);
    }

    [Fact]
    public void A_hole_is_for_a_specialist_and_a_second_thin_place_refuses_the_patch()
    {
        var one = WallSamples.Analysis(WallSamples.Plain.Replace("0.15]", "\"hole\"]", StringComparison.Ordinal)).Verdict;
        var two = WallSamples.Analysis(WallSamples.Plain.Replace("0.15]", "\"hole\"]", StringComparison.Ordinal).Replace("[0.13", "[0.70", StringComparison.Ordinal)).Verdict;

        Assert.Equal(WallVerdictKind.Specialist, one.Kind);
        Assert.Contains("There is a hole in F1", one.Why, StringComparison.Ordinal);
        Assert.Equal(WallVerdictKind.Specialist, two.Kind);
        Assert.True(two.PatchRefused);
        Assert.Contains("patch", two.Heading, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_thin_all_over_is_replaced()
    {
        var verdict = WallSamples.Analysis(WallSamples.Plain.Replace("0.1", "0.7", StringComparison.Ordinal)).Verdict;

        Assert.Equal(WallVerdictKind.Replace, verdict.Kind);
        Assert.True(verdict.PatchRefused);
    }

    [Fact]
    public void The_chance_over_the_years_is_a_band_that_opens()
    {
        var course = WallSamples.Analysis(WallSamples.Plain.Replace("\"thickness\": 1.2", "\"thickness\": 0.5", StringComparison.Ordinal)).Course;

        Assert.Equal(41, course.Count);
        Assert.All(course, y => Assert.True(y.Chance.Low <= y.Chance.Middle && y.Chance.Middle <= y.Chance.High));
        Assert.True(course[^1].Chance.High - course[^1].Chance.Low > course[0].Chance.High - course[0].Chance.Low);
    }

    [Fact]
    public void Limits_of_the_document_decide()
    {
        var thin = WallSamples.Plain.Replace("\"thickness\": 1.2", "\"thickness\": 0.4", StringComparison.Ordinal);

        Assert.False(WallSamples.Analysis(thin).Verdict.IsNo);
        Assert.True(WallSamples.Analysis(thin.Replace("\"age\": 20", "\"age\": 20, \"limits\": { \"leastLeft\": 0.7 }", StringComparison.Ordinal)).Verdict.IsNo);
    }

    [Fact]
    public void Brass_on_steel_is_kept_apart_and_steel_on_steel_let_pass()
    {
        var analysis = WallSamples.Analysis(WallSamples.Plain.Replace(
            "\"age\": 20", "\"age\": 20, \"contacts\": [{ \"where\": \"union\", \"metal\": \"brass\", \"area\": 12, \"bare\": 3 }, { \"where\": \"strap\", \"metal\": \"steel\" }]", StringComparison.Ordinal));

        Assert.False(analysis.Couples[0].Couple.IsCompatible);
        Assert.Equal(5, analysis.Couples[0].AreaEffect);
        // Half a millimetre of still water alone takes 0.45 mm of iron a year, five times that for the areas.
        Assert.Equal(2.24, analysis.Couples[0].MillimetresPerYear!.Value.Low, 0.02);
        Assert.Contains("nylon", analysis.Couples[0].Words, StringComparison.Ordinal);
        Assert.True(analysis.Couples[1].Couple.IsCompatible);
    }

    [Fact]
    public void No_word_of_it_calls_a_tank_safe_or_tells_how_to_weld()
    {
        var words = string.Join(' ', [.. WallCautions.All, WallSamples.Analysis(WallSamples.Plain).Verdict.Why, WallSamples.Analysis(WallSamples.Plain).Verdict.Heading]);

        Assert.DoesNotContain("is safe", words, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("specialist", words, StringComparison.Ordinal);
        Assert.Contains("gas-free", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_shows_its_working()
    {
        var analysis = WallSamples.Analysis(WallSamples.Plain);

        var lines = CellWorking.Of(analysis, analysis.Survey.Deepest!);

        Assert.Contains("deepest pit 0.16", lines[0], StringComparison.Ordinal);
        // 20 years × ((1.2/0.16)^(1/0.8) − 1) = 228 years.
        Assert.Contains("7.50", lines[1], StringComparison.Ordinal);
        Assert.Contains("equations 15 to 18", lines[^1], StringComparison.Ordinal);
        Assert.Equal("Not read.", CellWorking.Of(analysis, analysis.Survey.Cells.First(c => c.Reading.Kind is CellReadingKind.NotRead))[0]);
    }
}
