namespace Tickover.Cli.Tests;

public sealed class GaugeCommandTests
{
    private const string Sample = "samples/tern.gauge.json";

    [Fact]
    public async Task The_story_names_truth_needle_estimate_and_remedies()
    {
        var ran = await Ran.OfAsync("gauge", Sample);

        Assert.Equal(ExitCode.Done, ran.Code);
        Assert.StartsWith("Larkfield Tern 2800, fuel gauge: roundabouts", ran.Output, StringComparison.Ordinal);
        foreach (var said in new[] { "Best estimate", "Restrictor of 4 mm", "Second sender", "To level", "Is the fuel where we think it is?" })
        {
            Assert.Contains(said, ran.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_recorded_trace_is_driven()
    {
        var ran = await Ran.OfAsync("gauge", Sample, "--trace", "samples/tern-trace.csv");

        Assert.Equal(ExitCode.Done, ran.Code);
        Assert.Contains("recorded drive, 120 s", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("t,ax,ay,az", "0,0.02,1.0", "--units g")]
    [InlineData("t,ax,ay,az", "9.8,0,0.1", "ax does")]
    [InlineData("t,ax,ay", "0.02,0.03", "--units g or --units m/s2")]
    [InlineData("t,east,north", "0,0", "--axes")]
    public async Task What_looks_wrong_in_a_trace_is_asked(string head, string figures, string said)
    {
        var ran = await Ran.OfAsync(head + "\n" + string.Join('\n', Enumerable.Range(0, 100).Select(k => FormattableString.Invariant($"{k * 0.1:0.0},{figures}"))), ["gauge", Sample, "--trace", "-"]);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Contains(said, ran.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_gap_in_a_trace_is_told()
    {
        var trace = "t,ax,ay\n" + string.Join('\n', Enumerable.Range(0, 100).Select(k => FormattableString.Invariant($"{(k < 50 ? k * 0.1 : 20 + k * 0.1):0.0},0.5,1.5")));

        var ran = await Ran.OfAsync(trace, ["gauge", Sample, "--trace", "-"]);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains("gap of 20.1 s", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("samples/no-such.gauge.json", "There is no file")]
    [InlineData("samples/tern-2800.car.json", "tickover-gauge-1")]
    public async Task What_cannot_be_used_is_said_in_words(string file, string said)
    {
        var ran = await Ran.OfAsync("gauge", file);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains(said, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_slip_of_a_document_is_told_at_once()
    {
        var ran = await Ran.OfAsync("""{ "format": "tickover-gauge-1", "name": "x", "left": { "heights": [0, 250, 200], "areas": [1, 1, 1], "across": 300, "along": 300, "place": [0, 500, 0] }, "fuel": { "left": -3, "right": 5 } }""", ["gauge", "-"]);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        foreach (var said in new[] { "left.heights", "right", "pipe", "sender", "fuel.left" })
        {
            Assert.Contains(said, ran.Error, StringComparison.Ordinal);
        }
    }
}
