using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>13: with what was measured, how good that is, and what it cannot tell.</summary>
internal static class TrustPart
{
    private const int Named = 8;

    internal static IEnumerable<Block> Of(Telling t)
    {
        yield return new Heading(2, t.Say("How far the figures can be trusted"));
        var readings = Rounds.Valid(t.Record.Readings).Where(r => r.NoReading.Length == 0).ToList();
        var used = readings.Where(r => r.Instrument is not null).GroupBy(r => r.Instrument!.Value).ToList();
        yield return t.Tell(Sentence(readings));
        yield return used.Count == 0
            ? t.Tell("No instrument was noted.")
            : FiguresPart.Small(t, "Instruments", [new Column("Instrument"), new Column("Good to"), new Column("Compared with something better"), new Column("Used for")],
                [.. used.Select(g => Row(t, t.Record.Workshop.Find(g.Key), g)).OfType<IReadOnlyList<Prose>>()]);
        yield return t.Note("A figure with \u00b1 lies within that much of the truth as far as the instrument is good to what it says; it says nothing of how the car changes from day to day. A figure without \u00b1 was taken with an instrument of which this is not known, or by eye.");
    }

    private static string Sentence(List<Reading> readings)
    {
        var bare = readings.Count(r => r.Instrument is null && r.Si is not null);
        return readings.Count == 0 ? "Nothing was measured."
            : bare == 0 ? $"{readings.Count} readings stand in this account."
            : $"{readings.Count} readings stand in this account; for {(bare == 1 ? "one figure" : $"{bare} figures")} the instrument was not noted.";
    }

    private static string Used(List<string> measures) =>
        measures.Count <= Named ? string.Join("; ", measures) : $"{string.Join("; ", measures.Take(Named))}; and {measures.Count - Named} more, see the figures behind";

    private static List<Prose>? Row(Telling t, Instrument? instrument, IEnumerable<Reading> readings)
    {
        if (instrument is null)
        {
            return null;
        }

        var last = readings.Max(r => DateOnly.FromDateTime(r.TakenAt.DateTime));
        var measures = readings.Select(r => MeasureCatalogue.Find(r.Measure)).OfType<MeasureDefinition>().Select(t.Label).Distinct(StringComparer.Ordinal).ToList();
        var name = instrument.SerialNumber.Length > 0 ? $"{instrument.Name}, no. {instrument.SerialNumber}" : instrument.Name;
        return
        [
            Prose.Bold(name), Prose.Of(instrument.GoodTo.Length > 0 ? instrument.GoodTo : "not known"),
            Prose.Of(PaperText.Sentence(InstrumentStanding.On(instrument, last).Words)).Sentence(instrument.Note), Prose.Of(Used(measures)),
        ];
    }
}
