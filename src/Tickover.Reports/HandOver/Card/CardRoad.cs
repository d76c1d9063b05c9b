using Tickover.Reports.HandOver.Parts;
using Tickover.Reports.Paper;
using Tickover.Workshop.JetFittings;

namespace Tickover.Reports.HandOver.Card;

/// <summary>λ by regime on the last logged run, with day, log and the jets it was driven with where those are out again.</summary>
internal static class CardRoad
{
    internal static IEnumerable<Block> Of(Telling t)
    {
        var story = JetStory.Of(t.Record);
        if (story.Showings is not [.., var last])
        {
            yield break;
        }

        yield return new Table(
            t.Say("\u03bb on the last logged run"), [new Column(t.Say("\u03bb on the last logged run")), .. last.Regimes.Select(r => Column.OfFigures(t.Say(RoadJetsPart.Name(r.Regime))))],
            [
                [t.Prose("Mean"), .. last.Regimes.Select(r => Prose.Bold(Two(r.Mean)))],
                [t.Prose("Lowest to highest"), .. last.Regimes.Select(r => Prose.Of($"{Two(r.Richest)} to {Two(r.Leanest)}"))],
            ]);
        yield return t.Note($"{RoadJetsPart.Named(t, last)}: {last.InTarget} of {last.Readings} readings in target, {Jets(last, story)}.");
    }

    private static string Jets(RunShowing last, JetStory story) => last.Jets.Same(story.Left)
        ? "driven with the jets on this card"
        : $"driven with other jets than these: {string.Join(", ", Others(last, story.Left))}";

    private static IEnumerable<string> Others(RunShowing last, JetsIn? left) =>
        left is null ? ["not noted"] : last.Jets.Parts.Zip(left.Parts).Where(p => p.First != p.Second).Select(p => $"{p.First.Label.ToLowerInvariant()} {p.First.Size}");

    private static string Two(double lambda) => lambda.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture);
}
