namespace Tickover.Cli.Tests;

/// <summary>What a person reads, as text files to be looked at when they change.</summary>
public sealed class PrintedTests
{
    [Theory]
    [InlineData("check-tern", "tickover check samples/tern-2800.car.json")]
    [InlineData("check-faulty", "tickover check samples/faulty.car.json")]
    [InlineData("check-defaults-gannet", "tickover check --defaults samples/gannet-1500.car.json")]
    [InlineData("explain-tern", "tickover explain samples/tern-2800.car.json --rpm 4000 --throttle 45")]
    [InlineData("explain-gannet-idle", "tickover explain samples/gannet-1500.car.json --rpm 900 --throttle 2")]
    [InlineData("gas-diluted", "tickover gas --co 3.30 --hc 180 --co2 11.6 --o2 2.55 --lambda 1.012")]
    [InlineData("gas-table", "tickover gas samples/gas-readings.csv")]
    [InlineData("linkage-osprey", "tickover linkage samples/osprey.linkage.json")]
    [InlineData("help-gas", "tickover gas --help")]
    [InlineData("help-mixture", "tickover mixture --help")]
    public async Task Command_prints_what_was_looked_at(string name, string line)
    {
        var ran = await Ran.LineAsync(line);

        Assert.DoesNotContain("NaN", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain('\e', ran.Output);
        await Shown.MatchesAsync($"tests/Tickover.Cli.Tests/Printed/{name}.txt", ran.Output);
    }
}
