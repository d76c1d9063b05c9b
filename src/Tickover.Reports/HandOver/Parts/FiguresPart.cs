using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>The figures behind the words: everything measured, as found beside as left, with instrument and day.</summary>
internal static class FiguresPart
{
    internal static IEnumerable<Block> Of(Telling t)
    {
        yield return new PageBreak();
        yield return new Heading(2, t.Say("The figures behind"));
        if (t.Comparisons.Count == 0)
        {
            yield return t.Tell("No figure as found or as left is in the record.");
            yield break;
        }

        yield return t.Note("As found: before anything was touched. As left: what the car goes home with. \u00b1 is what the instrument is good to.");
        foreach (var step in t.Comparisons.GroupBy(c => c.Measure.Steps[0]).OrderBy(g => g.Key))
        {
            var heading = step.Key.Heading();
            yield return new Heading(3, t.Say($"{step.Key.StageOf().Words()}: {char.ToLowerInvariant(heading[0])}{heading[1..]}"));
            yield return t.TableOr(
                "", heading, [new Column("Measured"), new Column("Where"), Column.OfFigures("As found"), Column.OfFigures("As left"), new Column("With, on")],
                [.. step.SelectMany(c => Rows(t, c))]);
            var limits = step.Where(c => c.Measure.Limit is not null).Select(c => $"{c.Measure.Label}: {c.Measure.Limit!.Text} ({c.Measure.Limit.Source})").ToList();
            if (limits.Count > 0)
            {
                yield return t.Note($"Accepted. {string.Join("; ", limits)}.");
            }
        }
    }

    private static IEnumerable<IReadOnlyList<Prose>> Rows(Telling t, MeasureComparison comparison) => comparison.Rows.Select(row => (IReadOnlyList<Prose>)
    [
        Prose.Of(t.Label(comparison.Measure)), Prose.Of(row.Place == Place.WholeCar ? "" : t.Where(row.Place)), Cell(t, comparison, row.AsFound, comparison.AsFound), Cell(t, comparison, row.AsLeft, comparison.AsLeft), With(t, row),
    ]);

    private static Prose Cell(Telling t, MeasureComparison comparison, JudgedReading? judged, RoundSpread? spread)
    {
        var value = t.Value(comparison.Measure, judged);
        if (judged is null)
        {
            return Prose.Of("\u2013");
        }

        // What the round says of a place counts more than the place alone
        var verdict = spread?.Places.FirstOrDefault(p => p.Reading.Reading.Id == judged.Reading.Id)?.Verdict ?? judged.Verdict;
        return verdict is Verdict.High or Verdict.Low ? Prose.Bold($"{value}, {t.Say(verdict == Verdict.High ? "high" : "low")}") : Prose.Of(value);
    }

    private static Prose With(Telling t, BeforeAndAfterRow row)
    {
        var names = new[] { row.AsFound, row.AsLeft }.OfType<JudgedReading>().Select(j => j.Instrument?.Name ?? t.Say("not noted")).Distinct(StringComparer.Ordinal);
        var days = new[] { row.AsFound, row.AsLeft }.OfType<JudgedReading>().Select(j => t.ShortDay(j.On)).Distinct(StringComparer.Ordinal);
        return Prose.Of($"{string.Join("; ", names)}, {string.Join(" and ", days)}");
    }
}
