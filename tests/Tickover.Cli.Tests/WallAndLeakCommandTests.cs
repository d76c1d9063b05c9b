namespace Tickover.Cli.Tests;

public sealed class WallAndLeakCommandTests
{
    [Theory]
    [InlineData("wall", "samples/gannet.wall.json", ExitCode.Done)]
    [InlineData("wall", "samples/tern.wall.json", ExitCode.AnswerIsNo)]
    [InlineData("leak", "samples/gannet.leak.json", ExitCode.Done)]
    [InlineData("leak", "samples/tern.leak.json", ExitCode.AnswerIsNo)]
    public async Task The_verdict_is_the_exit_code(string command, string file, int code)
    {
        var (text, json) = (await Ran.OfAsync(command, file), await Ran.OfAsync(command, file, "--json"));

        Assert.Equal((code, code), (text.Code, json.Code));
        Assert.Empty(text.Error);
        Assert.DoesNotContain("NaN", text.Output, StringComparison.Ordinal);
        Assert.True(text.Output.IndexOf("Caution", StringComparison.Ordinal) < text.Output.IndexOf("Chance of a hole", StringComparison.Ordinal) || command is "leak");
        Assert.All(text.Output.Split('\n'), l => Assert.InRange(l.TrimEnd().Length, 0, Terminal.DefaultWidth));
    }

    [Theory]
    [InlineData("wall", "samples/no-such.wall.json", "There is no file")]
    [InlineData("wall", "samples/tern.leak.json", "tickover-wall-1")]
    [InlineData("leak", "samples/tern.wall.json", "tickover-leak-1")]
    [InlineData("leak", "samples/tern-road.csv", "Not readable as JSON")]
    public async Task What_cannot_be_used_is_said_in_words(string command, string file, string said)
    {
        var ran = await Ran.OfAsync(command, file);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Contains(said, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_slip_of_a_document_is_told_at_once()
    {
        var ran = await Ran.OfAsync("""{ "format": "tickover-wall-1", "name": "x", "metal": "pewter", "thickness": 0, "age": -3, "outline": [[0, 0], [9, 9]] }""", ["wall", "-"]);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.All(new[] { "metal", "thickness", "age", "outline" }, path => Assert.Contains(path, ran.Error, StringComparison.Ordinal));
    }
}
