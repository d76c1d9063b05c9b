using Tickover.Acceptance.Tests.Catalogue;
using Tickover.Acceptance.Tests.Regression;

namespace Tickover.Acceptance.Tests;

public sealed class ChecksPageTests
{
    private const string UpdateVariable = "TICKOVER_UPDATE";

    [Fact]
    public void The_committed_page_is_the_one_the_catalogue_gives()
    {
        var written = ChecksPage.Write(CheckCatalogue.Groups, ShapeChecks.All, RegressionRun.All);
        if (string.Equals(Environment.GetEnvironmentVariable(UpdateVariable), "1", StringComparison.Ordinal))
        {
            File.WriteAllText(PagePath(), written);
        }

        Assert.True(File.Exists(PagePath()), $"docs/checks.md is missing. Run these tests with {UpdateVariable}=1.");
        var committed = File.ReadAllText(PagePath());

        Assert.True(
            string.Equals(written, committed, StringComparison.Ordinal),
            $"docs/checks.md is not what the catalogue gives. Run these tests with {UpdateVariable}=1 and review the change. First difference: {FirstDifference(committed, written)}");
    }

    [Fact]
    public void A_derived_figure_is_never_called_published() =>
        Assert.All(
            CheckCatalogue.All.Where(check => check.Source.Contains("independently", StringComparison.Ordinal)),
            check => Assert.NotEqual(SourceKind.Published, check.Kind));

    [Fact]
    public void A_check_that_is_off_shows_its_difference()
    {
        var check = new OutsideCheck
        {
            Subject = "s",
            Quantity = "q",
            Source = "book",
            Kind = SourceKind.Published,
            Published = 200,
            Unit = "Pa",
            Ours = () => 202,
        };

        var page = ChecksPage.Write([new CheckGroup("Title", [check])], [], []);

        Assert.Contains("| s: q, Pa | book | published | 200 | 202 | +1.000 % | 0.5 % |", page, StringComparison.Ordinal);
    }

    private static string FirstDifference(string committed, string written)
    {
        var pairs = written.Split('\n').Zip(committed.Split('\n'));
        var (here, there) = pairs.FirstOrDefault(pair => !string.Equals(pair.First, pair.Second, StringComparison.Ordinal));
        return here is null ? "the one is longer" : $"'{there}' should be '{here}'";
    }

    private static string PagePath() => Path.Combine(Repository.Root, "docs", "checks.md");
}
