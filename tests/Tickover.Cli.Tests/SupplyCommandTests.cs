using Tickover.Architecture.Tests;

namespace Tickover.Cli.Tests;

public sealed class SupplyCommandTests
{
    [Theory]
    [InlineData("samples/no-such.supply.json", "There is no file")]
    [InlineData("samples/tern.linkage.json", "tickover-supply-1")]
    [InlineData("samples/tern-road.csv", "Not readable as JSON")]
    public async Task What_cannot_be_used_is_said_in_words(string file, string said)
    {
        var ran = await Ran.OfAsync("supply", file);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Contains(said, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pump_curve_that_rises_and_a_part_that_hangs_on_nothing_are_both_told()
    {
        const string rising = "\"curve\": [{ \"flow\": 0, \"pressure\": 0.1 }, { \"flow\": 1, \"pressure\": 0.3 }]";
        var ran = await Ran.OfAsync($$"""{ "format": "tickover-supply-1", "name": "x", "tank": { "surface": "full" }, "engine": { "power": 60 }, "parts": [{ "name": "pump", "kind": "pump", {{rising}} }] }""", ["supply", "-"]);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains("tank.surface", ran.Error, StringComparison.Ordinal);
        Assert.Contains("parts[0].curve", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_supply_that_does_not_carry_the_engine_ends_with_one()
    {
        var hungry = Repository.Read("samples/tern.supply.json").Replace("\"mainJet\": 135", "\"mainJet\": 260", StringComparison.Ordinal);

        var ran = await Ran.OfAsync(hungry, ["supply", "-"]);

        Assert.Equal(ExitCode.AnswerIsNo, ran.Code);
        Assert.Contains("does not carry the engine", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_sample_carries_its_engine_and_its_readings_are_judged()
    {
        var ran = await Ran.OfAsync("supply", "samples/tern.supply.json");

        Assert.Equal(ExitCode.Done, ran.Code);
        Assert.Contains("Filter loaded", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Petrol vapour burns and kills", ran.Output, StringComparison.Ordinal);
    }
}
