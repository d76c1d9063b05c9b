using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>2: what was found, the worst first, with its photographs.</summary>
internal static class FoundPart
{
    internal static IEnumerable<Block> Of(Telling t)
    {
        var findings = t.Record.Findings.OrderBy(f => f.Severity).ThenBy(f => f.Kept).ToList();
        yield return new Heading(2, t.Say("What we found"));
        var dangers = findings.Where(f => f.Severity == Severity.Unsafe && f.State != FindingState.PutRight).ToList();
        if (dangers.Count > 0)
        {
            yield return new Callout(t.Say("Not put right, and unsafe"), [new Items([.. dangers.Select(What)])]);
        }

        yield return t.TableOr(
            "No findings were noted.", "Findings, the worst first", [new Column("How soon"), new Column("What we found"), new Column("What became of it")],
            [.. findings.Select(f => (IReadOnlyList<Prose>)[Prose.Marked(f.Severity, SeverityMark.Word(f.Severity)), What(f), Became(t, f)])]);
        if (findings.Count > 0)
        {
            yield return t.Note("Unsafe: can hurt someone now. Soon: will fail before long. Watch: to be looked at again.");
        }

        foreach (var block in SheetPart.Of(t))
        {
            yield return block;
        }

        var numbers = findings.ToDictionary(f => f.Id);
        var shown = t.Record.Photographs.Where(p => p.InHandOver && p.Finding is { } id && numbers.ContainsKey(id)).ToList();
        if (shown.Count > 0)
        {
            yield return new Heading(3, t.Say("Photographs of what we found"));
            yield return new Photos([.. shown.OrderBy(p => findings.IndexOf(numbers[p.Finding!.Value])).Select(p => Pictures.Of(t, p, numbers[p.Finding!.Value]))]);
        }
    }

    private static Prose What(Finding finding)
    {
        var what = Prose.Bold(PaperText.Capital(finding.What.Trim().Length > 0 ? finding.What : "Not described"));
        what = finding.Where.Trim().Length > 0 ? what.Then($", {finding.Where.Trim()}") : what;
        return finding.Detail.Trim().Length > 0 ? what.Then(". ").Then(PaperText.Sentence(finding.Detail)) : what;
    }

    private static Prose Became(Telling t, Finding finding)
    {
        var on = finding.SettledOn is { } day ? $" on {t.ShortDay(day)}" : "";
        var state = t.Prose(finding.State switch
        {
            FindingState.PutRight => $"Put right{on}.",
            FindingState.Left => $"Left as it is, decided{on}.",
            FindingState.Declined => $"Not done: you did not want it{on}.",
            _ => "Nothing has been decided yet.",
        });
        // A decision that begins with "Left" has said it
        var decided = finding.State == FindingState.Left && finding.Decision.TrimStart().StartsWith("Left", StringComparison.OrdinalIgnoreCase)
            ? Prose.Of(PaperText.Sentence(finding.Decision))
            : state.Sentence(finding.Decision);
        return finding.ApprovedBy.Trim().Length > 0 ? decided.Then($" {t.Say("Approved:")} {finding.ApprovedBy.Trim()}.") : decided;
    }
}
