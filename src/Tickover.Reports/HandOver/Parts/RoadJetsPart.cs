using System.Globalization;
using Tickover.Reports.Paper;
using Tickover.Workshop.JetFittings;
using Tickover.Workshop.Logs;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>After before and after: what the logged runs showed of the mixture, which jets were in and which went in, why, and whether the road proved it.</summary>
internal static class RoadJetsPart
{
    internal static IEnumerable<Block> Of(Telling t)
    {
        var story = JetStory.Of(t.Record);
        if (story.IsEmpty)
        {
            yield break;
        }

        yield return new Heading(2, t.Say("Mixture on the road, and the jets"));
        yield return t.Tell(Sentence(t, story));
        foreach (var block in Road(t, story).Concat(Jets(t, story)).Concat(story.Fittings.Select(f => Why(t, f))))
        {
            yield return block;
        }
    }

    /// <summary>Runs by name and day, such as "tern-road.csv of 30 Nov 2026".</summary>
    internal static string Named(Telling t, RunShowing showing) => string.Join(", ", showing.Runs.Select(r => $"{r.Name} of {t.ShortDay(r.On)}"));

    /// <summary>A mean with the range it was read in.</summary>
    internal static string Lambda(RegimeShowing? r) => r switch
    {
        null => "not driven",
        { Readings: 1 } => $"{Two(r.Mean)}, one reading",
        _ => $"{Two(r.Mean)} ({Two(r.Richest)} to {Two(r.Leanest)}), {Count(r.Readings)} readings",
    };

    /// <summary>A share of driving in per cent.</summary>
    internal static string Share(double part) => string.Create(CultureInfo.InvariantCulture, $"{100 * part:0}\u00a0%");

    /// <summary>The changes of a set in words, such as "main jet 135 to 140".</summary>
    internal static string Changes(JetFitting fitting) => string.Join(", ", fitting.Parts.Select(p => $"{p.Label.ToLowerInvariant()} {p.From} to {p.To}"));

    private static string Sentence(Telling t, JetStory story)
    {
        var lambda = "A probe in the exhaust told, on the road, how much air each drop of petrol got. The figure is called \u03bb: 1.00 is just enough, below is rich, above is lean.";
        var arrived = story.AsArrived is { } before ? $" With the jets that were in on arrival {InTarget(before)}." : " The car was not logged with the jets that were in on arrival.";
        var same = story.Left?.Same(story.Arrived) == true;
        var left = story.AsLeft is { } after ? $" With the jets the car goes home with {InTarget(after)}."
            : same ? " The jets were left as they were."
            : " No run was logged with the jets the car goes home with, so what is expected of them is not proved.";
        var aside = story.LeftOut == 0 ? "" : $" {(story.LeftOut == 1 ? "One log is" : $"{Count(story.LeftOut)} logs are")} not counted, because the car or the probe was not in order.";
        return story.Showings.Count == 0 ? "No run was logged on this visit, so what is expected of the jets is not proved." : lambda + arrived + left + aside;
    }

    private static string InTarget(RunShowing showing) => $"{Count(showing.InTarget)} of {Count(showing.Readings)} readings were in target";

    private static IEnumerable<Block> Road(Telling t, JetStory story)
    {
        var driven = new[] { ("As arrived", story.AsArrived), ("As left", story.AsLeft) }.Where(s => s.Item2 is not null).Select(s => (Heading: s.Item1, Showing: s.Item2!)).ToList();
        if (driven.Count == 0)
        {
            yield break;
        }

        List<Column> columns = [new Column("When"), Column.OfFigures("Target, \u03bb")];
        columns.AddRange(driven.SelectMany(d => new[] { Column.OfFigures($"{d.Heading}, \u03bb"), Column.OfFigures("In target") }));
        yield return t.TableOr("", "Mixture on the road", columns, [.. Regimes(driven.Select(d => d.Showing)).Select(r => Row(t, r, driven))]);
        yield return t.Note($"{string.Join(". ", driven.Select(d => $"{d.Heading}: {Named(t, d.Showing)}"))}. In brackets the lowest and highest reading; a reading is a stretch of steady driving. Targets are common practice of the trade.");
    }

    private static IReadOnlyList<Prose> Row(Telling t, Regime regime, List<(string Heading, RunShowing Showing)> driven)
    {
        var all = driven.Select(d => d.Showing.Regimes.FirstOrDefault(r => r.Regime == regime)).ToList();
        var target = all.OfType<RegimeShowing>().First();
        return
        [
            Prose.Bold(t.Say(Name(regime))).Then($", {t.Say(Doing(regime))}"), Prose.Of($"{Two(target.TargetRichest)} to {Two(target.TargetLeanest)}"),
            .. all.SelectMany(r => new[] { Prose.Of(Lambda(r)), Prose.Of(r is null ? "\u2013" : $"{Count(r.InTarget)} of {Count(r.Readings)}") }),
        ];
    }

    private static IEnumerable<Block> Jets(Telling t, JetStory story)
    {
        if (story.Left is not { } left)
        {
            yield break;
        }

        yield return new Heading(3, t.Say("Which jets"));
        if (story.Arrived is not { } arrived || left.Same(arrived))
        {
            yield return t.TableOr("", "Jets", [new Column("Part, all barrels alike"), Column.OfFigures("In the car, as it came")], [.. left.Parts.Where(p => p.Size is not JetsIn.Unknown).Select(p => (IReadOnlyList<Prose>)[t.Prose(p.Label), Prose.Of(p.Size)])]);
            yield break;
        }

        yield return t.TableOr(
            "", "Jets", [new Column("Part, all barrels alike"), Column.OfFigures("As arrived"), Column.OfFigures("As left")],
            [.. left.Parts.Zip(arrived.Parts).Where(p => p.First.Size is not JetsIn.Unknown).Select(p => (Now: p.First, Then: p.Second)).Select(p => (IReadOnlyList<Prose>)
            [
                t.Prose(p.Now.Label), Prose.Of(p.Then.Size), string.Equals(p.Now.Size, p.Then.Size, StringComparison.Ordinal) ? Prose.Of(p.Now.Size) : Prose.Bold($"{p.Now.Size}, new"),
            ])]);
    }

    private static Paragraph Why(Telling t, FittingStory story)
    {
        var fitting = story.Fitting;
        var rests = fitting.RestsOn.Length > 0 ? $"reckoned from {fitting.RestsOn}" : "reckoned from the description of the car alone, so a direction and no more";
        var expected = $"{fitting.Choice}, {rests}. Expected: {Share(fitting.Share)} of driving in target ({Share(fitting.ShareLowest)} to {Share(fitting.ShareHighest)}), where the jets before were expected to give {Share(fitting.ShareBefore)}.";
        var proof = story.Proof is { } run
            ? $"Driven afterwards ({Named(t, run)}): {InTarget(run)}."
            : "No run was logged with it afterwards, so this is not proved.";
        return new Paragraph(Prose.Bold(t.Say($"Fitted on {t.ShortDay(fitting.On)}: {Changes(fitting)}.")).Then($" {t.Say("Why: " + expected)}").Then($" {t.Say(proof)}"));
    }

    private static IEnumerable<Regime> Regimes(IEnumerable<RunShowing> showings) => showings.SelectMany(s => s.Regimes.Select(r => r.Regime)).Distinct().Order();

    /// <summary>The trade's word of a regime.</summary>
    internal static string Name(Regime regime) => regime switch
    {
        Regime.Idle => "Idle",
        Regime.Progression => "Progression",
        Regime.Changeover => "Changeover",
        Regime.Cruise => "Cruise",
        _ => "Full load",
    };

    private static string Doing(Regime regime) => regime switch
    {
        Regime.Idle => "foot off the pedal",
        Regime.Progression => "a light foot, as in a village",
        Regime.Changeover => "where one jet hands over to the next",
        Regime.Cruise => "steady driving",
        _ => "foot hard down",
    };

    private static string Two(double lambda) => lambda.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);
}
