using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>The figures behind the words: everything measured, as found beside as left, with instrument and day; and every check signed.</summary>
internal static class FiguresPart
{
    // From so many places on, they stand beside each other rather than below
    private const int Many = 3;

    internal static IEnumerable<Block> Of(Telling t)
    {
        if (t.Comparisons.Count > 0)
        {
            yield return new PageBreak();
        }

        yield return new Heading(2, t.Say("The figures behind"));
        if (t.Comparisons.Count == 0)
        {
            yield return t.Tell("No figure as found or as left is in the record.");
        }
        else
        {
            yield return t.Note("As found: before anything was touched. As left: what the car goes home with. \u00b1 is what the instrument is good to. High and low: outside what is accepted, by more than the instrument could be wrong.");
        }

        foreach (var step in t.Comparisons.GroupBy(c => c.Measure.Steps[0]).OrderBy(g => g.Key))
        {
            yield return new Heading(3, t.Say(step.Key.Heading()));
            foreach (var block in Step(t, step.Key.Heading(), [.. step]))
            {
                yield return block;
            }
        }

        foreach (var block in Checks(t))
        {
            yield return block;
        }
    }

    private static IEnumerable<Block> Step(Telling t, string heading, IReadOnlyList<MeasureComparison> comparisons)
    {
        var few = comparisons.Where(c => c.Rows.Count < Many).ToList();
        if (few.Count > 0)
        {
            yield return Small(t, heading, [new Column("Measured"), new Column("Where"), Column.OfFigures("As found"), Column.OfFigures("As left"), new Column("With, on")], [.. few.SelectMany(c => Rows(t, c))]);
        }

        foreach (var alike in comparisons.Where(c => c.Rows.Count >= Many).GroupBy(c => string.Join('|', c.Rows.Select(r => r.Place)), StringComparer.Ordinal))
        {
            yield return PlacesTable.Of(t, heading, [.. alike]);
        }

        var limits = comparisons.Where(c => c.Measure.Limit is not null).Select(c => $"{c.Measure.Label}: {c.Measure.Limit!.Text} ({c.Measure.Limit.Source})").ToList();
        if (limits.Count > 0)
        {
            yield return t.Note($"Accepted. {string.Join("; ", limits)}.");
        }
    }

    private static IEnumerable<IReadOnlyList<Prose>> Rows(Telling t, MeasureComparison comparison) => comparison.Rows.Select(row => (IReadOnlyList<Prose>)
    [
        Prose.Of(t.Label(comparison.Measure)), Prose.Of(row.Place == Place.WholeCar ? "" : t.Where(row.Place)),
        Cell(t, comparison.AsFound, row.AsFound, t.Value(comparison.Measure, row.AsFound)), Cell(t, comparison.AsLeft, row.AsLeft, t.Value(comparison.Measure, row.AsLeft)),
        Prose.Of(With(t, [row.AsFound, row.AsLeft])),
    ]);

    /// <summary>A figure with "high" or "low" where it is outside; what the round says of a place counts more than the place alone.</summary>
    internal static Prose Cell(Telling t, RoundSpread? spread, JudgedReading? judged, string value)
    {
        if (judged is null)
        {
            return Prose.Of("\u2013");
        }

        var verdict = spread?.Places.FirstOrDefault(p => p.Reading.Reading.Id == judged.Reading.Id)?.Verdict ?? judged.Verdict;
        return verdict is Verdict.High or Verdict.Low ? Prose.Bold($"{value} {t.Say(verdict.Words())}") : Prose.Of(value);
    }

    /// <summary>Instruments and days of some readings.</summary>
    internal static string With(Telling t, IEnumerable<JudgedReading?> readings)
    {
        var known = readings.OfType<JudgedReading>().ToList();
        var names = known.Select(j => j.Instrument is { } with ? with.Name : t.Say("instrument not noted")).Distinct(StringComparer.Ordinal);
        var days = known.Select(j => j.On).Distinct().Order().Select(t.ShortDay);
        return $"{string.Join("; ", names)}, {string.Join(" and ", days)}";
    }

    internal static Table Small(Telling t, string name, IReadOnlyList<Column> columns, IReadOnlyList<IReadOnlyList<Prose>> rows) =>
        new(t.Say(name), [.. columns.Select(c => c with { Heading = t.Say(c.Heading) })], rows) { Small = true };

    private static IEnumerable<Block> Checks(Telling t)
    {
        var signed = t.Record.SignOffs.Where(s => s.Override.Length == 0).ToList();
        if (signed.Count == 0)
        {
            yield break;
        }

        yield return new Heading(3, t.Say("Checks signed on the way"));
        yield return Small(t, "Checks signed", [new Column("Before"), new Column("Check"), new Column("What was seen"), new Column("Signed")],
            [.. signed.Select(s => (IReadOnlyList<Prose>)
            [
                t.Prose(PaperText.Capital(GateCatalogue.Of(s.Gate).Before)), t.Prose(GateCatalogue.Find(s.Check)?.Words ?? s.Check), Prose.Of(s.Seen.Length > 0 ? s.Seen : "not noted"),
                Prose.Of($"{t.Name(s.Person)}, {t.ShortDay(s.On)}"),
            ])]);
    }
}
