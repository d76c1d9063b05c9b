using System.Xml.Linq;

namespace Tickover.Cli.Tests;

public sealed class LinkageCommandTests
{
    [Fact]
    public async Task A_picture_is_written_whole_beside_what_is_printed()
    {
        var folder = Directory.CreateTempSubdirectory("tickover-cli-");
        try
        {
            var file = Path.Combine(folder.FullName, "linkage.svg");

            var ran = await Ran.OfAsync("linkage", "samples/tern.linkage.json", "--picture", file, "--down", "60");

            Assert.Equal(ExitCode.Done, ran.Code);
            Assert.Contains("with the pedal 60", XDocument.Load(file).Root!.Attribute("aria-label")!.Value, StringComparison.Ordinal);
            Assert.StartsWith("Larkfield Tern 2800, throttle linkage", ran.Output, StringComparison.Ordinal);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Theory]
    [InlineData("samples/no-such.linkage.json", "There is no file")]
    [InlineData("samples/tern-2800.car.json", "tickover-linkage-1")]
    [InlineData("samples/tern-road.csv", "Not readable as JSON")]
    public async Task What_cannot_be_used_is_said_in_words_and_changes_nothing(string file, string said)
    {
        var ran = await Ran.OfAsync("linkage", file);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Contains(said, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_slip_of_a_document_is_told_at_once()
    {
        var ran = await Ran.OfAsync("""{ "format": "tickover-linkage-1", "name": "x", "pedal": { "shaft": "a", "travel": 900 }, "shafts": [{ "name": "b", "axis": "left" }], "carburettors": [] }""", ["linkage", "-"]);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains("pedal.travel", ran.Error, StringComparison.Ordinal);
        Assert.Contains("shafts[0].at", ran.Error, StringComparison.Ordinal);
        Assert.Contains("carburettors", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("-1")]
    [InlineData("101")]
    [InlineData("NaN")]
    public async Task A_pedal_beyond_its_travel_is_refused(string down)
    {
        var ran = await Ran.OfAsync("linkage", "samples/tern.linkage.json", "--down", down);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains("0 to 100", ran.Error, StringComparison.Ordinal);
    }
}
