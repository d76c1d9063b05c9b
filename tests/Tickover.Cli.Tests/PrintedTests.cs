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
    [InlineData("supply-tern", "tickover supply samples/tern.supply.json")]
    [InlineData("jet-gannet", "tickover jet samples/gannet.jets.json")]
    [InlineData("level-tern", "tickover level samples/tern.level.json")]
    [InlineData("build-tern", "tickover build samples/tern.build.json")]
    [InlineData("wear-tern", "tickover wear samples/tern.wear.json")]
    [InlineData("wall-tern", "tickover wall samples/tern.wall.json")]
    [InlineData("leak-tern", "tickover leak samples/tern.leak.json")]
    [InlineData("tank-tern", "tickover tank samples/tern.tank.json")]
    [InlineData("sender-gannet", "tickover sender samples/gannet.tank.json")]
    [InlineData("gauge-tern", "tickover gauge samples/tern.gauge.json")]
    [InlineData("fault-tern", "tickover fault --case samples/tern.fault.json")]
    [InlineData("fault-symptoms", "tickover fault --list symptoms")]
    [InlineData("help-fault", "tickover fault --help")]
    [InlineData("balance-osprey", "tickover balance samples/osprey.rounds.json")]
    [InlineData("help-balance", "tickover balance --help")]
    [InlineData("help-practice", "tickover practice --help")]
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

    [Fact]
    public async Task Practice_in_words_says_what_was_looked_at()
    {
        string[] said =
        [
            "advice", "read idle all", "help", "read barrel 3 4 at 1500", "look stop 4", "rods off", "turn stop 3 out 3/8", "read barrel 5 6", "offer bankrod", "turn bankrod shorter 1 flat", "rods on", "turn stop 9 in 1/8",
            "dance", "name leak barrel 3", "finish",
        ];
        var ran = await Ran.OfAsync(string.Join('\n', said), ["practice", "samples/osprey-v8.car.json", "--seed", "7", "--difficulty", "1"]);

        Assert.Equal(ExitCode.Done, ran.Code);
        await Shown.MatchesAsync("tests/Tickover.Cli.Tests/Printed/practice-osprey.txt", ran.Output);
    }
}
