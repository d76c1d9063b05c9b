using Tickover.Reports.Paper;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>Measures taken at the same places, such as six barrels: a column a place, a line as found and a line as left.</summary>
internal static class PlacesTable
{
    internal static Table Of(Telling t, string name, IReadOnlyList<MeasureComparison> comparisons)
    {
        var places = comparisons[0].Rows.Select(r => r.Place).ToList();
        var kind = places[0].Kind;
        List<Column> columns = [new Column(PaperText.Capital(kind.ToString().ToLowerInvariant()))];
        columns.AddRange(places.Select(p => Column.OfFigures(p.Name)));
        columns.Add(new Column("With, good to, on"));
        return FiguresPart.Small(t, $"{name}, by {kind.ToString().ToLowerInvariant()}", columns, [.. comparisons.SelectMany(c => Lines(t, c))]);
    }

    private static IEnumerable<IReadOnlyList<Prose>> Lines(Telling t, MeasureComparison comparison)
    {
        var unit = comparison.Measure.IsNumber ? comparison.Measure.Unit(t.House.Units) : "";
        unit = unit.Length > 2 && t.Label(comparison.Measure).Contains(unit, StringComparison.Ordinal) ? "" : unit;
        var label = unit.Length > 0 ? $"{t.Label(comparison.Measure)}, {unit}" : t.Label(comparison.Measure);
        foreach (var (moment, spread, pick) in new (string, RoundSpread?, Func<BeforeAndAfterRow, JudgedReading?>)[]
        {
            ("as found", comparison.AsFound, r => r.AsFound), ("as left", comparison.AsLeft, r => r.AsLeft),
        })
        {
            var readings = comparison.Rows.Select(pick).ToList();
            if (readings.Any(r => r is not null))
            {
                yield return [Prose.Of($"{label}: ").ThenBold(t.Say(moment)), .. readings.Select(r => FiguresPart.Cell(t, spread, r, Number(t, comparison.Measure, r))), Prose.Of(With(t, readings))];
            }
        }
    }

    private static string Number(Telling t, MeasureDefinition measure, JudgedReading? judged) => judged switch
    {
        null => "",
        { Reading.NoReading.Length: > 0 } => t.Say("none"),
        { Reading.Si: { } si } => ShownMeasure.Number(measure, si, t.House.Units),
        _ => judged.Reading.Typed,
    };

    private static string With(Telling t, IReadOnlyList<JudgedReading?> readings)
    {
        var known = readings.OfType<JudgedReading>().ToList();
        var instruments = known.Select(j => j.Instrument).Distinct().Select(i => i is null ? t.Say("instrument not noted") : i.GoodTo.Length > 0 ? $"{i.Name}, {i.GoodTo}" : i.Name);
        var speeds = known.Select(j => j.Reading.EngineSpeedRpm).OfType<double>().Distinct().Order().ToList();
        var speed = speeds.Count == 0 ? "" : $" at {Shown.Range(Shown.Speed(speeds[0]), Shown.Speed(speeds[^1]))}\u202frpm";
        return $"{string.Join("; ", instruments)}, {string.Join(" and ", known.Select(j => j.On).Distinct().Order().Select(t.ShortDay))}{speed}";
    }
}
