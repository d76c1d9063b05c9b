using System.Globalization;
using System.Text;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Tests.Visits.Measures;

public class MeasurePageTests
{
    [Fact]
    public void The_committed_page_of_measures_is_the_generated_one() => Repository.AssertGenerated("docs/measures.md", Page());

    [Fact]
    public void The_page_names_every_measure() => Assert.All(MeasureCatalogue.All, m => Assert.Contains($"| {m.Label} | `{m.Key}` |", Page(), StringComparison.Ordinal));

    private static string Page()
    {
        var page = new StringBuilder("""
            # What is measured on a visit

            <!-- Generated from the catalogue of measures by the tests with TICKOVER_UPDATE=1; do not edit by hand. -->

            Every measure by stage, in the order of the work; one taken in several parts of the route stands in each. A maker's figure for the car in
            hand always stands above what is usual or accepted here. Odometer, story, fuel and scope stand with the visit itself.

            - **Unit**: metric, then imperial where it differs. Other units of the same kind are read as well; what is typed is kept as typed.
            - **Usually**: outside of it the person is asked once; nothing is refused for it.
            - **Accepted**: with where it comes from. Where it can be judged by figures, the instrument's band counts too.
            - **engine**: the engine runs. **round**: complete sets are read. **setting**: as found stands beside as left.

            """.ReplaceLineEndings("\n"));
        foreach (var stage in Enum.GetValues<Stage>())
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {(stage == Stage.StripDown ? "Strip-down" : stage == Stage.HandOver ? "Hand-over" : stage)}\n");
            foreach (var group in MeasureCatalogue.Of(stage))
            {
                page.Append(CultureInfo.InvariantCulture, $"\n### {group.Heading}\n\n| Measure | Key | Of each | Unit | Usually | Accepted | Taken with | |\n|---|---|---|---|---|---|---|---|\n");
                group.Measures.ToList().ForEach(m => page.Append(Line(m)));
            }
        }

        return page.ToString();
    }

    private static string Line(MeasureDefinition m)
    {
        var unit = string.Equals(m.MetricUnit, m.ImperialUnit, StringComparison.Ordinal) ? m.MetricUnit : $"{m.MetricUnit}, {m.ImperialUnit}";
        var limit = m.Limit is null ? "" : $"{m.Limit.Text} ({m.Limit.Source})";
        List<string> marks = [.. new[] { m.EngineRuns ? "engine" : "", m.IsRound ? "round" : "", m.IsSetting && !m.IsRound ? "setting" : "" }.Where(t => t.Length > 0)];
        var usual = m.Choices.Count > 0 ? string.Join(" / ", m.Choices) : ShownMeasure.Usual(m, UnitChoice.Metric).Replace("Usually ", "", StringComparison.Ordinal).Replace('\u2009', ' ');
        return $"| {m.Label} | `{m.Key}` | {m.Per.ToString().ToLowerInvariant()} | {unit} | {usual} | {limit} | {m.Hint} | {string.Join(", ", marks)} |\n";
    }
}
