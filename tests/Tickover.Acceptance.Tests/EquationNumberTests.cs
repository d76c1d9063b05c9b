using System.Text.RegularExpressions;

namespace Tickover.Acceptance.Tests;

public sealed partial class EquationNumberTests
{
    [Fact]
    public void Every_equation_the_code_names_is_on_its_page()
    {
        var pages = Directory.GetFiles(Path.Combine(Repository.Root, "docs", "physics"), "*.md")
            .ToDictionary(file => Path.GetFileNameWithoutExtension(file), File.ReadAllText, StringComparer.Ordinal);
        var named = Directory.GetFiles(Path.Combine(Repository.Root, "src", "Tickover.Physics"), "*.cs", SearchOption.AllDirectories)
            .SelectMany(file => Reference().Matches(File.ReadAllText(file)).Select(match => (File: Path.GetFileName(file), Page: match.Groups["page"].Value, Number: match.Groups["number"].Value)))
            .Where(reference => pages.ContainsKey(reference.Page))
            .ToList();

        Assert.NotEmpty(named);
        Assert.All(named, reference =>
            Assert.True(
                pages[reference.Page].Contains($"({reference.Number})", StringComparison.Ordinal),
                $"{reference.File} names {reference.Page} ({reference.Number}), which docs/physics/{reference.Page}.md has not."));
    }

    [GeneratedRegex(@"// (?<page>[a-z]+) \((?<number>\d+)\)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Reference();
}
