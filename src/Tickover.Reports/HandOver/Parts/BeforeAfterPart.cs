using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>5: before and after: how evenly it breathes, mixture, compression, the road test; each with what it means in a line.</summary>
internal static class BeforeAfterPart
{
    private static readonly string[] Breathing = ["idleAirflow", "carburettorAirflow", "idleDepression", "airflow1500"];
    private static readonly string[] Road = ["route", "roadDistance", "lambdaCruise", "lambdaProgression", "lambdaFullLoad", "lambdaTipIn", "hesitation", "snapThrottle", "restart10", "restart30", "coldStart", "garageSmell"];

    private static readonly (string Key, string Meaning)[] Headline =
    [
        ("idleSpeed", "how fast the engine turns with your foot off"),
        ("lambdaIdle", "air burnt against air needed: 1.00 is just enough, below is rich"),
        ("carbonMonoxide", "what a rich mixture leaves unburnt; also poison in a closed garage"),
        ("idleTiming", "how early the spark comes at idle"),
        ("fuelPressure", "what pushes the fuel to the carburettors"),
        ("fuelFlow", "whether the engine can be fed flat out"),
        ("needleShown", "where the needle stood"),
    ];

    internal static IEnumerable<Block> Of(Telling t)
    {
        yield return new Heading(2, t.Say("Before and after"));
        var breathing = Breathing.Select(t.Compared).FirstOrDefault(c => c is not null && (c.AsFound ?? c.AsLeft) is not null);
        var figures = Figures(t, breathing).ToList();
        if (figures.Count == 0)
        {
            yield return t.Tell("Balance and mixture were not measured before or after this visit.");
        }

        foreach (var block in Strip(t, breathing))
        {
            yield return block;
        }

        if (figures.Count > 0)
        {
            yield return t.TableOr("", "Before and after", [new Column("The same in figures"), Column.OfFigures("As found"), Column.OfFigures("As left"), new Column("What it means")], figures);
        }

        foreach (var block in Compression(t).Concat(RoadTest(t)))
        {
            yield return block;
        }
    }

    private static IEnumerable<Block> Strip(Telling t, MeasureComparison? breathing)
    {
        if (breathing is null || breathing.Measure.Quantity != Quantity.Airflow)
        {
            yield break;
        }

        var view = View(t, breathing);
        var limit = breathing.Measure.Limit is { } accepted ? $" Grey: the limit, {accepted.Text} ({accepted.Source}). Round: within. Diamond: outside." : "";
        yield return new Heading(3, t.Say("How evenly it breathes at idle"));
        yield return new Figure(d => BreathingStrip.Draw(d, view), BreathingStrip.Width, BreathingStrip.Height(view), BreathingStrip.Sentence(view));
        yield return t.Note($"Each mark is one {PlaceWord(breathing)}, in {Unit(t, breathing.Measure)} of air.{limit}");
    }

    private static BreathingView View(Telling t, MeasureComparison breathing)
    {
        var rows = new[] { ("As found", breathing.AsFound), ("As left", breathing.AsLeft) }.Where(r => r.Item2 is not null).Select(r => Row(t, r.Item1, r.Item2!));
        return new BreathingView([.. rows], breathing.Measure.Unit(t.House.Units));
    }

    private static BreathingRow Row(Telling t, string label, RoundSpread spread)
    {
        var measure = spread.Round.Measure;
        double In(double si) => ShownMeasure.In(measure, si, t.House.Units);
        return new BreathingRow(
            label, [.. spread.Places.Select(p => (In(p.Reading.Reading.Si!.Value), p.Verdict is Verdict.High or Verdict.Low))], In(spread.MeanSi),
            measure.Limit?.LargestDeviation(spread.MeanSi) is { } allowed ? In(allowed) : null);
    }

    private static IEnumerable<IReadOnlyList<Prose>> Figures(Telling t, MeasureComparison? breathing)
    {
        if (breathing is not null)
        {
            yield return [t.Prose($"Spread, highest less lowest {PlaceWord(breathing)}"), Spread(t, breathing.Measure, breathing.AsFound), Spread(t, breathing.Measure, breathing.AsLeft), t.Prose("how unlike each other they breathe; less is smoother")];
            yield return [t.Prose("Furthest from the mean"), Off(breathing.AsFound), Off(breathing.AsLeft), t.Prose("the one barrel that is worst")];
        }

        foreach (var (key, meaning) in Headline)
        {
            foreach (var row in t.Compared(key)?.Rows ?? [])
            {
                var measure = MeasureCatalogue.Find(key)!;
                var where = row.Place == Place.WholeCar ? "" : $", {t.Where(row.Place).ToLowerInvariant()}";
                yield return [Prose.Of($"{t.Label(measure)}{where}"), Shown(t.Value(measure, row.AsFound)), Shown(t.Value(measure, row.AsLeft)), t.Prose(meaning)];
            }
        }
    }

    private static IEnumerable<Block> Compression(Telling t)
    {
        if (t.Compared("compression") is not { } compared)
        {
            yield return t.Tell("Compression was not measured.");
            yield break;
        }

        yield return new Heading(3, t.Say("Compression"));
        yield return BeforeAfterTable.Of(t, "Compression", [new Column("Cylinder")], [.. compared.Rows.Select(r => new BeforeAfterTable.Row([Prose.Of(t.Where(r.Place))], t.Value(compared.Measure, r.AsFound), t.Value(compared.Measure, r.AsLeft)))]);
        yield return t.Note($"Whether rings and valves seal: what counts is that the cylinders are alike.{(compared.Measure.Limit is { } limit ? $" Accepted: {limit.Text} ({limit.Source})." : "")}");
    }

    private static IEnumerable<Block> RoadTest(Telling t)
    {
        yield return new Heading(3, t.Say("On the road"));
        var rows = Road.Select(t.Compared).OfType<MeasureComparison>().SelectMany(c => c.Rows.Select(r => new BeforeAfterTable.Row(
            [Prose.Of(r.Place == Place.WholeCar ? t.Label(c.Measure) : $"{t.Label(c.Measure)}, {t.Where(r.Place).ToLowerInvariant()}")], t.Value(c.Measure, r.AsFound), t.Value(c.Measure, r.AsLeft)))).ToList();
        yield return rows.Count == 0 ? t.Tell("No road test was noted.") : BeforeAfterTable.Of(t, "Road test", [new Column("On the road")], rows);
        if (rows.Count > 0 && t.Record.Runs.Count == 0)
        {
            yield return t.Note("No log of the drive is in the record, so no graph of it is shown.");
        }
    }

    private static Prose Spread(Telling t, MeasureDefinition measure, RoundSpread? spread) =>
        spread is null ? Shown("") : Prose.Bold(ShownMeasure.Text(measure, spread.SpreadSi, spread.SpreadBandSi, t.House.Units)).Then(Speed(spread));

    private static Prose Off(RoundSpread? spread) => Shown(spread is null ? "" : ShownMeasure.Percent(spread.LargestDeviationPart));

    private static string Speed(RoundSpread spread) => (spread.LowestRpm, spread.HighestRpm) switch
    {
        ({ } low, { } high) when high - low >= 10 => $" at {Reports.Shown.Speed(low)} to {Reports.Shown.SpeedWithUnit(high)}",
        ({ } low, _) => $" at {Reports.Shown.SpeedWithUnit(low)}",
        _ => "",
    };

    private static Prose Shown(string text) => Prose.Of(text.Length > 0 ? text : "not measured");

    private static string PlaceWord(MeasureComparison comparison) => comparison.Measure.Per.ToString().ToLowerInvariant();

    private static string Unit(Telling t, MeasureDefinition measure) => t.House.Units == UnitChoice.Metric ? "kilograms an hour" : measure.Unit(t.House.Units);
}
