using Tickover.Web.Documents;

namespace Tickover.Web.Tests.Documents;

public sealed class DocumentationTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("tickover-docs-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_table_keeps_to_the_policy_and_links_lead_to_pages()
    {
        File.WriteAllText(Path.Combine(_folder, "checks.md"), "# Checks\n\n| a | b |\n|---|--:|\n| 1 | 2 |\n\n[air](physics/air.md#eq-1) <script>alert(1)</script>\n");
        var html = Open().Html("checks")!;

        Assert.Contains("<td class=\"right\">2</td>", html, StringComparison.Ordinal);
        Assert.Contains("href=\"physics/air#eq-1\"", html, StringComparison.Ordinal);
        Assert.DoesNotContain("style=", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../secret")]
    [InlineData("physics/../../secret")]
    [InlineData("/etc/hosts")]
    [InlineData("none")]
    public void A_name_that_is_no_page_opens_nothing(string name)
    {
        File.WriteAllText(Path.Combine(Directory.CreateDirectory(Path.Combine(_folder, "outer")).FullName, "other.md"), "secret");

        Assert.Null(Open().Html(name));
    }

    [Fact]
    public void The_pages_on_the_physics_are_part_of_the_program()
    {
        var documents = new Documentation(new WebAppOptions { DataFolder = _folder });

        Assert.All(documents.Physics, name => Assert.NotNull(documents.Html($"physics/{name}")));
    }

    private Documentation Open() => new(new WebAppOptions { DataFolder = _folder, DocumentationFolder = _folder });
}
