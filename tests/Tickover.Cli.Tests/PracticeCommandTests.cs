using System.Text.Json;
using Json.Schema;
using Tickover.Architecture.Tests;

namespace Tickover.Cli.Tests;

/// <summary>The practice engine by its command.</summary>
public sealed class PracticeCommandTests
{
    private const string Acts =
        """
        {"round":"idle","read":["all"]}
        rubbish

        {"turn":"stop:1","turns":0.125}
        {"turn":"bypass:99","turns":0.125}
        {"rods":"off"}
        {"offer":"clamp"}
        {"look":"stop:1"}
        {"rods":"on"}
        {"round":1500}
        {"barrel":1,"held":2000,"read":["vacuum"]}
        {"barrel":[1,2],"held":2000}
        {"barrel":[1,99]}
        {"repair":"leakBelowPlate barrel 1"}
        {"finish":true}
        {"round":"idle"}
        """;

    [Theory]
    [InlineData("samples/osprey-v8.car.json")]
    [InlineData("samples/tern-2800.car.json")]
    [InlineData("samples/dunlin.plan.json")]
    [InlineData("samples/wigeon.plan.json")]
    public async Task Every_line_follows_the_schema_and_every_act_is_answered(string sample)
    {
        var ran = await Ran.OfAsync(Acts, ["practice", sample, "--seed", "3", "--difficulty", "2", "--json"]);

        var schema = JsonSchema.FromText(Repository.Read("docs/schemas/practice.schema.json"));
        var lines = ran.Output.TrimEnd().Split('\n');
        Assert.Equal(ExitCode.Done, ran.Code);
        Assert.Equal(15, lines.Length);
        Assert.All(lines, line =>
        {
            using var read = JsonDocument.Parse(line);
            Assert.True(schema.Evaluate(read.RootElement).IsValid, line);
        });
        Assert.Contains("\"score\"", lines[^1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{\"done\":true}")]
    [InlineData("{\"done\":true,\"said\":\"x\",\"minutes\":1,\"step\":{\"turn\":\"stop:2\"}}")]
    public void Schema_refuses_what_is_no_answer(string line)
    {
        using var read = JsonDocument.Parse(line);

        Assert.False(JsonSchema.FromText(Repository.Read("docs/schemas/practice.schema.json")).Evaluate(read.RootElement).IsValid);
    }

    [Theory]
    [InlineData("practice samples/osprey-v8.car.json --difficulty 7", "0, 1, 2 or 3")]
    [InlineData("practice samples/osprey-v8.car.json --seed x", "whole number")]
    [InlineData("practice samples/no-such.car.json", "no file")]
    [InlineData("practice samples/shelf.json", "samples/shelf.json")]
    [InlineData("practice -", "standard input")]
    public async Task What_cannot_be_practised_on_is_said(string line, string why)
    {
        var ran = await Ran.OfAsync(string.Empty, Ran.Words(line));

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains(why, ran.Error, StringComparison.Ordinal);
    }
}
