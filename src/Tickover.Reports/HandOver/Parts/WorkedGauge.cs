using System.Globalization;
using Tickover.Reports.Paper;
using Tickover.Workshop.Gauges;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>The fuel gauge explained from tanks and sender as described, where nobody filled them in steps.</summary>
internal static class WorkedGauge
{
    private static readonly double[] Places = [1, 0.75, 0.5, 0.25, 0];

    internal static IEnumerable<Block> Of(Telling t, GaugeStory story)
    {
        var analysis = GaugeAnalyst.Of(story);
        var words = t.Prose("The needle shows what its float finds in its own tank. ").Then(t.Say($"{analysis.Advice[0].Heading.TrimEnd('.')}."));
        if (analysis.Remedies[0].MinutesToLevel is { } minutes)
        {
            words = words.Then(t.Say(" After a fill or a long bend ")).ThenBold(t.Say($"give it {Math.Ceiling(minutes).ToString("0", CultureInfo.InvariantCulture)} minutes")).Then(t.Say(" before you believe it."));
        }

        yield return new Paragraph(words);
        yield return new Heading(3, t.Say("What the needle means"));
        var volume = MeasureCatalogue.Find("strappingLitres")!;
        yield return t.TableOr("", "Needle and fuel", [new Column("Needle"), Column.OfFigures("In the tanks")],
            [.. Places.Select(p => (IReadOnlyList<Prose>)[Prose.Bold(GaugeScale.Show(p)), Prose.Of(ShownMeasure.Text(volume, analysis.CubicMetresAt(p), t.House.Units))])]);
        yield return t.Note("Worked out from the shape of the tanks and from the sender, on level ground and levelled; not measured by filling in steps. How much of it the engine cannot reach was not measured, so fill up well before E.");
    }
}
