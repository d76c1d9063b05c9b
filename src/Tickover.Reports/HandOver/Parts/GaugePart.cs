using Tickover.Reports.Paper;
using Tickover.Workshop.Gauges;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>4: the fuel gauge explained: a picture of the tanks, what the needle means in litres, when to refuel, how long to wait after filling.</summary>
internal static class GaugePart
{
    private const string Litres = "strappingLitres";

    internal static IEnumerable<Block> Of(Telling t)
    {
        yield return new Heading(2, t.Say("Your fuel gauge, explained"));
        var tanks = Tanks(t);
        var steps = StrappingStep.Of(Rounds.Valid(t.Record.Readings));
        if (tanks.Count == 0 && steps.Count == 0)
        {
            foreach (var block in Unread(t))
            {
                yield return block;
            }

            yield break;
        }

        List<Block> words = [.. Picture(t, tanks), .. Words(t)];
        if (steps.Count == 0)
        {
            foreach (var block in words)
            {
                yield return block;
            }

            yield return t.Tell("What the needle means in litres was not measured.");
            yield break;
        }

        yield return new SideBySide(words, [.. Needle(t, steps)]);
    }

    // Without readings of the stage there may be a worksheet that describes tanks and sender.
    private static IEnumerable<Block> Unread(Telling t) =>
        t.Record.SheetOf(GaugeDocument.Format) is { } sheet && GaugeDocument.Read(sheet.Document).Story is { } story
            ? WorkedGauge.Of(t, story)
            : [t.Tell("The tanks and the gauge were not measured on this visit, so we cannot say what the needle means in litres.")];

    private static List<GaugeVessel> Tanks(Telling t)
    {
        var readings = Rounds.Valid(t.Record.Readings);
        var places = readings.Where(r => r.Place.Kind == PlaceKind.Tank).Select(r => r.Place).Distinct().OrderBy(p => p.Name is "right" ? 1 : 0).ThenBy(p => p.Name, StringComparer.Ordinal);
        return [.. places.Take(4).Select(p => new GaugeVessel(p.Name, Holds(t, p), readings.Any(r => r.Place == p && r.Measure.StartsWith("sender", StringComparison.Ordinal) && r.NoReading.Length == 0)))];
    }

    private static string Holds(Telling t, Place tank)
    {
        foreach (var key in new[] { "usableVolume", "tankVolume" })
        {
            if (t.Compared(key)?.Rows.FirstOrDefault(r => r.Place == tank) is { } row && (row.AsLeft ?? row.AsFound)?.Reading.Si is { } si)
            {
                return ShownMeasure.Text(MeasureCatalogue.Find(key)!, si, t.House.Units);
            }
        }

        return "";
    }

    private static IEnumerable<Block> Picture(Telling t, List<GaugeVessel> tanks)
    {
        if (tanks.Count > 0)
        {
            var view = new GaugeView(tanks, Last(t, "crossPipeBore") is { } bore ? Text("crossPipeBore", bore, t) : "");
            yield return new Figure(d => GaugePicture.Draw(d, view), GaugePicture.Width(view), GaugePicture.Height, GaugePicture.Sentence(view));
        }
    }

    private static IEnumerable<Block> Words(Telling t)
    {
        var words = Prose.Empty;
        if (Tanks(t).Count > 1)
        {
            words = t.Prose("The tanks are vessels joined at the foot. The fuel in them stands level only when it has had time to cross, and the needle shows what the float finds in its own tank.");
        }

        if (Last(t, "settlingTime") is { } settle)
        {
            words = words.Then(words.IsEmpty ? "" : " ").Then(t.Say("After a fill or a long bend ")).ThenBold(t.Say($"give it {Text("settlingTime", settle, t)}")).Then(t.Say(" before you believe the needle."));
        }
        else
        {
            words = words.Sentence(t.Say("How long the tanks take to level after filling was not measured."));
        }

        yield return new Paragraph(words);
        yield return new Paragraph(Refuel(t));
    }

    private static Prose Refuel(Telling t) => Last(t, "litresAtEmptyMark") is { } left
        ? t.Prose("With the needle at E you can still use ").ThenBold(Text("litresAtEmptyMark", left, t)).Then(t.Say(". Fill up before that."))
        : t.Prose("How much is left with the needle at E was not measured, so fill up well before it.");

    private static IEnumerable<Block> Needle(Telling t, IReadOnlyList<StrappingStep> steps)
    {
        var volume = MeasureCatalogue.Find(Litres)!;
        var atEmpty = steps.Where(s => s.Needle <= 0).Select(s => (double?)s.Volume).LastOrDefault();
        var unusable = atEmpty - Last(t, "litresAtEmptyMark")?.Reading.Si;
        List<Column> columns = [new Column("Needle"), Column.OfFigures("In the tanks")];
        if (unusable is not null)
        {
            columns.Add(Column.OfFigures("You can use"));
        }

        yield return new Heading(3, t.Say("What the needle means"));
        yield return t.TableOr("", "Needle and fuel", columns,
        [
            .. steps.Select(s => (IReadOnlyList<Prose>)
            [
                Prose.Bold(GaugeScale.Show(s.Needle)), Prose.Of(ShownMeasure.Text(volume, s.Volume, t.House.Units)),
                .. unusable is { } lost ? new[] { Prose.Of(ShownMeasure.Text(volume, Math.Max(s.Volume - lost, 0), t.House.Units)) } : [],
            ]),
        ]);
        yield return t.Note(Source(t));
    }

    private static string Source(Telling t)
    {
        var last = Rounds.Valid(t.Record.Readings).Last(r => string.Equals(r.Measure, Litres, StringComparison.Ordinal));
        var instrument = t.Record.Workshop.Find(last.Instrument);
        var with = instrument is null ? "" : instrument.GoodTo.Length > 0 ? $" with {instrument.Name}, good to {instrument.GoodTo}" : $" with {instrument.Name}";
        return $"Measured by filling in steps{with}, on {t.ShortDay(DateOnly.FromDateTime(last.TakenAt.DateTime))}. On level ground, and levelled.";
    }

    private static JudgedReading? Last(Telling t, string key) => t.Compared(key)?.Rows.Select(r => r.AsLeft ?? r.AsFound).FirstOrDefault(j => j?.Reading.Si is not null);

    private static string Text(string key, JudgedReading judged, Telling t) => ShownMeasure.Text(MeasureCatalogue.Find(key)!, judged.Reading.Si!.Value, t.House.Units);
}
