using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tests.Cars;

public class CarChangeTests
{
    private const double Tolerance = 1e-9;

    private static Car Twin => CarTexts.Sound(CarTexts.Twin);

    [Fact]
    public void A_change_for_all_barrels_stands_once_and_takes_out_the_single_ones()
    {
        var changed = Change(Twin, "barrel.mainJet", "125");

        Assert.All(changed.Barrels, b => Assert.Equal(1.25e-3, b.Figures.Si("barrel.mainJet"), Tolerance));
        Assert.Equal(
            CarTexts.Twin
                .Replace("\"choke\": \"32 mm\" }", "\"choke\": \"32 mm\", \"mainJet\": 125 }", StringComparison.Ordinal)
                .Replace(", \"mainJet\": 130", string.Empty, StringComparison.Ordinal),
            changed.Document);
    }

    [Fact]
    public void A_change_for_one_barrel_leaves_the_others()
    {
        var changed = Change(Twin, "carburettors[0].barrels[0].choke", "30 mm");

        Assert.Equal(0.030, changed.Barrels[0].Figures.Si("barrel.choke"), Tolerance);
        Assert.Equal(0.032, changed.Barrels[1].Figures.Si("barrel.choke"), Tolerance);
        Assert.Equal(CarTexts.TwinWith("{ \"feeds\": [1] }", "{ \"feeds\": [1], \"choke\": \"30 mm\" }"), changed.Document);
    }

    [Fact]
    public void An_empty_text_goes_back_to_the_default()
    {
        var changed = Change(Twin, "carburettors[0].barrels[1].mainJet", " ");

        // 4 x 32 = 128 -> 130 by rule, no longer given
        Assert.Equal(OriginKind.Computed, changed.Barrels[1].Figures["barrel.mainJet"].Origin.Kind);
        Assert.Equal(CarTexts.TwinWith(", \"mainJet\": 130", string.Empty), changed.Document);
    }

    [Fact]
    public void A_first_member_is_taken_out_with_its_comma()
    {
        var changed = Change(Twin, "barrel.throttleBore", string.Empty);

        Assert.Equal(CarTexts.TwinWith("\"throttleBore\": \"40 mm\", ", string.Empty), changed.Document);
    }

    [Fact]
    public void A_missing_object_is_made_on_a_line_of_its_own()
    {
        var changed = Change(Twin, "ambient.temperature", "30 °C");

        Assert.Equal(303.15, changed.Ambient.Si("ambient.temperature"), Tolerance);
        Assert.Contains("  ],\n  \"ambient\": { \"temperature\": \"30 °C\" }\n}", changed.Document.ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("name", "Marram \"Six\"", "\"name\": \"Marram \\\"Six\\\"\"")]
    [InlineData("fuel", "E10", "\"fuel\": \"E10\"")]
    [InlineData("engine.bore", "82 mm", "\"bore\": \"82 mm\"")]
    [InlineData("engine.compressionRatio", "9,5", "\"compressionRatio\": \"9,5\"")]
    [InlineData("engine.firingOrder", "2-1", "\"firingOrder\": [2, 1]")]
    [InlineData("barrel.screwTurns", "1.5", "\"screwTurns\": 1.5")]
    [InlineData("barrel.progressionHoles", "1 mm at 1 mm; 1 mm at 2 mm", "\"progressionHoles\": [\"1 mm at 1 mm\", \"1 mm at 2 mm\"]")]
    [InlineData("barrel.emulsionHoles", "[\"2 x 1 mm at 5 mm\"]", "\"emulsionHoles\": [\"2 x 1 mm at 5 mm\"]")]
    [InlineData("carburettors[0].pumpJet", "45", "\"pumpJet\": 45")]
    public void A_change_writes_what_was_typed(string path, string text, string expected) =>
        Assert.Contains(expected, Change(Twin, path, text).Document, StringComparison.Ordinal);

    [Theory]
    [InlineData("barrel.choke", "45 mm", "barrels.choke")]
    [InlineData("barrel.choke", "\"", "barrels.choke")]
    [InlineData("carburettors[0].barrels[1].mainJet", "1.35", "carburettors[0].barrels[1].mainJet")]
    [InlineData("engine.bore", "", "engine.bore")]
    [InlineData("engine.bohr", "80 mm", "engine.bohr")]
    [InlineData("carburettors[7].barrels[1].mainJet", "135", "carburettors[7].barrels[1].mainJet")]
    [InlineData("carburettors", "none", "carburettors")]
    [InlineData("format", "other", "format")]
    [InlineData("engine..bore", "80 mm", "engine..bore")]
    [InlineData("", "80 mm", "")]
    public void A_faulty_change_gives_the_faults_and_leaves_the_car(string path, string text, string faultPath)
    {
        var car = Twin;

        var reading = CarDocument.Change(car, path, text);

        Assert.Null(reading.Car);
        Assert.Contains(reading.Faults, f => string.Equals(f.Path, faultPath, StringComparison.Ordinal));
        Assert.Equal(CarTexts.Twin, car.Document);
    }

    [Fact]
    public void Changes_that_need_each_other_are_made_at_once()
    {
        var reading = CarDocument.Change(Twin, [new("barrel.choke", "44 mm"), new("barrel.throttleBore", "55 mm"), new("barrel.mainJet", "175")]);

        Assert.Empty(reading.Faults);
        Assert.All(reading.Car!.Barrels, b => Assert.Equal(0.044, b.Figures.Si("barrel.choke"), Tolerance));
    }

    [Fact]
    public void Several_faulty_changes_are_reported_together()
    {
        var reading = CarDocument.Change(Twin, [new("barrel.choke", "wide"), new("barrel.mainJett", "135"), new("engine.bore", "80")]);

        Assert.Null(reading.Car);
        Assert.Equal(["barrel.mainJett", "engine.bore", "barrels.choke"], reading.Faults.Select(f => f.Path), StringComparer.Ordinal);
    }

    [Fact]
    public void Holes_are_written_back_as_they_are_shown()
    {
        var barrel = CarTexts.Sound(Repository.Sample("tern-2800")).Barrels[0];

        var changed = Change(Twin, "barrel.emulsionHoles", string.Join("; ", barrel.EmulsionHoles.Select(FigureText.Show)));
        changed = Change(changed, "barrel.progressionHoles", string.Join("\n", barrel.ProgressionHoles.Select(FigureText.Show)));

        Assert.Equal(barrel.EmulsionHoles.Select(FigureText.Show), changed.Barrels[0].EmulsionHoles.Select(FigureText.Show), StringComparer.Ordinal);
        Assert.Equal(barrel.ProgressionHoles, changed.Barrels[1].ProgressionHoles);
    }

    [Fact]
    public void Every_figure_of_every_sample_can_be_written_as_shown_and_taken_out_again()
    {
        foreach (var name in SampleTests.Sound)
        {
            var car = CarTexts.Sound(Repository.Sample(name));
            foreach (var figure in car.Engine.Concat(car.Ambient).Concat(car.Barrels[0].Figures))
            {
                var shown = FigureText.Show(figure);
                var written = Change(car, figure.Definition.Key, shown);
                var found = written.Engine.Concat(written.Ambient).Concat(written.Barrels[^1].Figures).Single(f => f.Definition == figure.Definition);
                Assert.Equal(shown, FigureText.Show(found));
                Assert.Equal(OriginKind.Given, found.Origin.Kind);
            }
        }
    }

    private static Car Change(Car car, string path, string text)
    {
        var reading = CarDocument.Change(car, path, text);
        Assert.True(reading.Car is not null, $"{path} = {text}: {CarTexts.Report(reading)}");
        return reading.Car;
    }
}
