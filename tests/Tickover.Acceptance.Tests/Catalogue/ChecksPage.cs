using System.Globalization;
using System.Text;
using Tickover.Acceptance.Tests.Regression;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Writes docs/checks.md from the catalogue.</summary>
public static class ChecksPage
{
    public static string Write(IReadOnlyList<CheckGroup> groups, IReadOnlyList<ShapeCheck> shapes, IReadOnlyList<RegressionRun> regressions)
    {
        var page = new StringBuilder();
        WriteHead(page, [.. groups.SelectMany(group => group.Checks)]);
        foreach (var group in groups)
        {
            Line(page, $"## {group.Title}");
            Line(page, "");
            Line(page, "| What | Source | Kind | There | Here | Difference | Allowed |");
            Line(page, "|---|---|---|--:|--:|--:|--:|");
            foreach (var check in group.Checks)
            {
                Line(page, Row(check));
            }

            Line(page, "");
        }

        WriteRegressions(page, regressions);
        WriteShapes(page, shapes);
        return page.ToString().TrimEnd('\n') + "\n";
    }

    public static string KindInWords(SourceKind kind) => kind switch
    {
        SourceKind.Published => "published",
        SourceKind.FromMemory => "from memory",
        SourceKind.CommonPractice => "common practice",
        SourceKind.Derived => "derived",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "not a kind of source"),
    };

    private static void WriteHead(StringBuilder page, IReadOnlyList<OutsideCheck> checks)
    {
        Line(page, "# Checks against the outside");
        Line(page, "");
        Line(page, "What the models give, beside what others print. Written by the acceptance tests from the catalogue they run; do not edit it by hand.");
        Line(page, "");
        Line(page, "- **published**: printed in the source named, seen there or in an open data set that quotes it.");
        Line(page, "- **from memory**: printed in the source named, quoted from memory; check it before relying on it.");
        Line(page, "- **common practice**: a workshop's rule of thumb, no published source.");
        Line(page, "- **derived**: worked out independently for this project, from the inputs or the formula of the source named. Another hand, no authority.");
        Line(page, "");
        Line(page, "Books round their answers and their constants, so 0.5 % is allowed where nothing else is said.");
        Line(page, "");
        Line(page, "| Kind | Checks | Largest difference |");
        Line(page, "|---|--:|--:|");
        foreach (var kind in checks.GroupBy(check => check.Kind).OrderBy(kind => kind.Key))
        {
            var largest = kind.Max(check => Math.Abs(check.Difference(check.Ours())));
            Line(page, $"| {KindInWords(kind.Key)} | {Text(kind.Count())} | {Percent(largest)} |");
        }

        Line(page, "");
    }

    private static void WriteShapes(StringBuilder page, IReadOnlyList<ShapeCheck> shapes)
    {
        if (shapes.Count == 0)
        {
            return;
        }

        Line(page, "## Shapes of the mixture");
        Line(page, "");
        Line(page, "What the trade and the books say must happen, on the six of the samples. No printed figure: the answer must lie within the bounds.");
        Line(page, "");
        Line(page, "| What must happen | Figure | Source | Kind | From | To | Here |");
        Line(page, "|---|---|---|---|--:|--:|--:|");
        foreach (var shape in shapes)
        {
            Line(page, $"| {shape.Statement} | {shape.Figure} | {shape.Source} | {KindInWords(shape.Kind)} | {Number(shape.AtLeast, 4)} | {Number(shape.AtMost, 4)} | {Number(shape.Ours(), 3)} |");
        }

        Line(page, "");
    }

    private static void WriteRegressions(StringBuilder page, IReadOnlyList<RegressionRun> runs)
    {
        if (runs.Count == 0)
        {
            return;
        }

        Line(page, "## Least squares");
        Line(page, "");
        Line(page, "NIST/ITL Statistical Reference Datasets, nonlinear regression (published, public domain): 23 of the 27 sets, from both published starts, differences instead of derivatives.");
        Line(page, "Digits in common with the certified values, the worst parameter of each set; eleven are certified, 6 are asked for. A dash: it ended elsewhere, and the tests say where. The sum of Lanczos1 is 1.4e-25, beyond doubles.");
        Line(page, "");
        Line(page, "| Set | Level | Parameters | Points | Digits, start 1 | Digits, start 2 | Digits of the sum | Steps, start 1 | Steps, start 2 |");
        Line(page, "|---|---|--:|--:|--:|--:|--:|--:|--:|");
        foreach (var set in runs.GroupBy(run => run.Set))
        {
            var (one, two) = (set.Single(run => run.Start == 1), set.Single(run => run.Start == 2));
            Line(page, $"| {set.Key.Name} | {set.Key.Level} | {Text(set.Key.Certified.Count)} | {Text(set.Key.Y.Length)} | {Digits(one.Digits)} | {Digits(two.Digits)} | {Digits(two.DigitsOfSum)} | {Text(one.Found.Steps)} | {Text(two.Found.Steps)} |");
        }

        Line(page, "");
    }

    // Whole digits: the tenth of one hangs on the last bit of the machine's exponential.
    private static string Digits(double digits) => digits < 1 ? "–" : Text((int)Math.Min(digits, RegressionRun.MostDigits));

    private static string Row(OutsideCheck check)
    {
        var ours = check.Ours();
        var unit = string.Equals(check.Unit, "1", StringComparison.Ordinal) ? "" : $", {check.Unit}";
        var note = check.Note.Length == 0 ? "" : $" ({check.Note})";
        return $"| {check.Subject}: {check.Quantity}{unit} | {check.Source}{note} | {KindInWords(check.Kind)} | {Number(check.Published, 10)} | {Number(ours, 6)} | {SignedPercent(check.Difference(ours))} | {Allowed(check.Tolerance)} |";
    }

    private static string Number(double value, int digits) => value.ToString($"G{digits}", CultureInfo.InvariantCulture);

    private static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Percent(double value) => (value * 100).ToString("0.000 '%'", CultureInfo.InvariantCulture);

    // The negative zero that rounding leaves would differ from run to run in sign only.
    private static string SignedPercent(double value) => (value * 100).ToString("+0.000 '%';-0.000 '%';0.000 '%'", CultureInfo.InvariantCulture);

    private static string Allowed(double value) => (value * 100).ToString("0.####", CultureInfo.InvariantCulture) + " %";

    private static void Line(StringBuilder page, string text) => page.Append(text).Append('\n');
}
