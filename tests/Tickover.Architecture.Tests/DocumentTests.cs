using System.Text.RegularExpressions;

namespace Tickover.Architecture.Tests;

/// <summary>What the documents say is there.</summary>
public sealed partial class DocumentTests
{
    private const int OneSecond = 1000;

    private static IEnumerable<string> Documents =>
        Repository.Under("docs", ".md").Concat(["README.md", "CHANGELOG.md"]);

    [Fact]
    public void Links_inside_the_clone_lead_somewhere()
    {
        var broken =
            from document in Documents
            from Match link in Link().Matches(WithoutFences(Repository.Read(document)))
            let target = link.Groups["target"].Value
            where !target.Contains("://", StringComparison.Ordinal) && !target.StartsWith("mailto:", StringComparison.Ordinal)
            where !Leads(document, target)
            select $"{document}: {target}";

        Assert.Empty(broken);
    }

    [Fact]
    public void Every_equation_that_code_refers_to_stands_in_docs_physics()
    {
        var pages = Repository.Under("docs/physics", ".md").ToDictionary(f => Path.GetFileNameWithoutExtension(f), Repository.Read, StringComparer.Ordinal);
        var found = (
            from file in Repository.Under("src", ".cs")
            from Match match in EquationReference().Matches(Repository.Read(file))
            from Capture number in match.Groups["number"].Captures
            select (File: file, Page: match.Groups["page"].Value, Number: number.Value)).ToArray();
        var missing = found.Where(f => !pages.GetValueOrDefault(f.Page, string.Empty).Contains($"({f.Number})", StringComparison.Ordinal))
            .Select(f => $"{f.File}: {f.Page} ({f.Number})");

        Assert.NotEmpty(found);
        Assert.Empty(missing);
    }

    [Fact]
    public void Every_decision_is_ten_lines_or_so_and_has_its_number_once()
    {
        var decisions = Repository.Under("docs/decisions", ".md").Select(Path.GetFileName).OfType<string>().ToArray();

        Assert.All(decisions, d => Assert.Matches(@"^\d{4}-[a-z0-9-]+\.md$", d));
        Assert.Distinct(decisions.Select(d => d[..4]), StringComparer.Ordinal);
        Assert.All(decisions, d => Assert.InRange(Repository.Lines($"docs/decisions/{d}").Length, 4, 30));
    }

    private static bool Leads(string document, string target)
    {
        var path = target.Split('#')[0];
        if (path.Length > 0)
        {
            return Repository.Has(Path.Combine(Path.GetDirectoryName(document) ?? string.Empty, path));
        }

        var anchor = target[1..];
        return Heading().Matches(Repository.Read(document)).Any(h => string.Equals(Anchor(h.Groups["text"].Value), anchor, StringComparison.Ordinal));
    }

    private static string Anchor(string heading) =>
        NotInAnchor().Replace(heading.Trim().ToLowerInvariant(), string.Empty).Replace(' ', '-');

    private static string WithoutFences(string text) => Fence().Replace(text, string.Empty);

    // "equation (18)", and the "(12)" of "eq. (7) and (12)", are another source's own numbers. What is ours is a comment such as
    // "fuels (4)" or "docs/physics/fuels.md (4) to (6)", or the text "metering (3)" alone in quotes, as WorkingStep.Equation has it.
    [GeneratedRegex(@"(?:""|//[^""\n]*?\b)(?<page>(?!(?:equation|and|to)\b)[a-z][a-z-]+)(?:\.md)? \((?<number>\d+[a-z]?)\)(?:(?:,| and| to) \((?<number>\d+[a-z]?)\))*", RegexOptions.None, OneSecond)]
    private static partial Regex EquationReference();

    [GeneratedRegex(@"\]\((?<target>[^)\s]+)\)", RegexOptions.None, OneSecond)]
    private static partial Regex Link();

    [GeneratedRegex(@"^#+ (?<text>.+)$", RegexOptions.Multiline, OneSecond)]
    private static partial Regex Heading();

    [GeneratedRegex(@"[^\w\- ]", RegexOptions.None, OneSecond)]
    private static partial Regex NotInAnchor();

    [GeneratedRegex(@"^```.*?^```", RegexOptions.Multiline | RegexOptions.Singleline, OneSecond)]
    private static partial Regex Fence();
}
