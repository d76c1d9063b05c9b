using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.StripDown.Cards;

/// <summary>Holds the places of a set against each other.</summary>
/// <param name="record">The visit.</param>
/// <param name="last">The reading that counts of each measure and place.</param>
internal sealed class SetJudge(VisitRecord record, IReadOnlyDictionary<(string Measure, Place Place), Reading> last)
{
    private readonly UnitChoice _units = record.Workshop.House.Units;

    public SetRow Row(MeasureDefinition measure)
    {
        var places = Places.Of(record, measure.Per);
        List<Reading> noted = [.. places.Select(p => last.GetValueOrDefault((measure.Key, p))).OfType<Reading>().Where(r => r.NoReading.Length == 0)];
        if (noted.Count == 0)
        {
            return new SetRow { Measure = measure, Standing = SetStanding.NotNoted };
        }

        var row = Compare(measure, noted);
        return row with { Missing = [.. places.Where(p => !last.ContainsKey((measure.Key, p)))] };
    }

    private SetRow Compare(MeasureDefinition measure, List<Reading> noted)
    {
        if (MustBeTheSame(measure))
        {
            return Same(measure, noted);
        }

        return measure.IsNumber && measure.Limit is { CanBeJudged: true } limit ? Within(measure, limit, noted) : Only(measure, noted);
    }

    // Sizes that come in steps, codes and states: there is no nearly.
    private static bool MustBeTheSame(MeasureDefinition measure) => measure.IsSetting && measure.Quantity is Quantity.Words or Quantity.Choice or Quantity.JetNumber;

    private SetRow Only(MeasureDefinition measure, List<Reading> noted) => new() { Measure = measure, Standing = SetStanding.NotCompared, Usual = Range(measure, noted), IsRange = Ranges(noted) };

    private SetRow Same(MeasureDefinition measure, List<Reading> noted)
    {
        var kinds = noted.GroupBy(r => Text(measure, r), StringComparer.OrdinalIgnoreCase).OrderByDescending(g => g.Count()).ToList();
        if (kinds.Count == 1)
        {
            return new SetRow { Measure = measure, Standing = noted.Count == 1 ? SetStanding.NotCompared : SetStanding.Alike, Usual = kinds[0].Key };
        }

        // With as many of one as of the other nobody can say which is the odd one.
        var tied = kinds[0].Count() == kinds[1].Count();
        var odd = tied ? noted : noted.Where(r => !string.Equals(Text(measure, r), kinds[0].Key, StringComparison.OrdinalIgnoreCase));
        return new SetRow
        {
            Measure = measure,
            Standing = SetStanding.Differs,
            Usual = tied ? "" : kinds[0].Key,
            Odd = [.. odd.Select(r => new SetOdd(r.Place, Text(measure, r), r.Note))],
            Why = measure.Limit is { } limit ? Why(limit) : "Accepted: all alike, unless a reason stands beside the odd one (common practice).",
        };
    }

    private SetRow Within(MeasureDefinition measure, MeasureLimit limit, List<Reading> noted)
    {
        var spread = RoundSpread.Of(new ReadingRound { Round = null, Measure = measure, Moment = noted[0].Moment, Readings = noted }, record.Workshop);
        if (spread is null)
        {
            var alone = JudgedReading.Of(measure, noted[0], record.Workshop).Verdict;
            return new SetRow { Measure = measure, Standing = limit.JudgesPlaces ? Standing(alone) : SetStanding.NotCompared, Usual = Range(measure, noted), Odd = alone is Verdict.Low or Verdict.High ? [Odd(measure, noted[0])] : [], Why = Why(limit) };
        }

        var standing = Standing(spread.Verdict);
        return new SetRow
        {
            Measure = measure,
            Standing = standing,
            Usual = Range(measure, noted),
            IsRange = Ranges(noted),
            Odd = standing is SetStanding.Differs or SetStanding.CannotBeTold ? [.. Outside(spread).Select(r => Odd(measure, r))] : [],
            Why = $"{Why(limit)} {(limit.JudgesRounds ? $"Apart by {ShownMeasure.Text(measure, spread.SpreadSi, spread.SpreadBandSi, _units)}." : "")}".TrimEnd(),
        };
    }

    // By the spread alone the one farthest from the middle of the others is the odd one; with two it is either.
    private static IEnumerable<Reading> Outside(RoundSpread spread)
    {
        var outside = spread.Places.Where(p => p.Verdict is Verdict.Low or Verdict.High or Verdict.CannotBeTold).Select(p => p.Reading.Reading).ToList();
        if (outside.Count > 0 || spread.Places.Count < 3)
        {
            return outside.Count > 0 ? outside : spread.Places.Select(p => p.Reading.Reading);
        }

        var sorted = spread.Places.Select(p => p.Reading.Reading).OrderBy(r => r.Si).ToList();
        var middle = sorted[sorted.Count / 2].Si!.Value;
        return [sorted.MaxBy(r => Math.Abs(r.Si!.Value - middle))!];
    }

    private SetOdd Odd(MeasureDefinition measure, Reading reading) => new(reading.Place, Text(measure, reading), reading.Note);

    private static SetStanding Standing(Verdict verdict) => verdict switch
    {
        Verdict.Low or Verdict.High => SetStanding.Differs,
        Verdict.CannotBeTold => SetStanding.CannotBeTold,
        _ => SetStanding.Alike,
    };

    private static string Why(MeasureLimit limit) => $"Accepted: {limit.Text} ({limit.Source}).";

    private string Text(MeasureDefinition measure, Reading reading) => reading.Si is { } si && measure.IsNumber ? ShownMeasure.Text(measure, si, _units) : reading.Typed;

    private static bool Ranges(List<Reading> noted) => noted.Select(r => r.Si).Distinct().Count() > 1;

    private string Range(MeasureDefinition measure, List<Reading> noted)
    {
        var figures = noted.Where(r => r.Si is not null).OrderBy(r => r.Si).ToList();
        if (!measure.IsNumber || figures.Count == 0)
        {
            return string.Join(", ", noted.Select(r => r.Typed).Distinct(StringComparer.OrdinalIgnoreCase));
        }

        var (low, high) = (Text(measure, figures[0]), Text(measure, figures[^1]));
        return string.Equals(low, high, StringComparison.Ordinal) ? low : $"{ShownMeasure.Number(measure, figures[0].Si!.Value, _units)} to {high}";
    }
}
