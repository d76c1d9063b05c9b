using Tickover.Kill;

namespace Tickover.Records.Tests;

/// <summary>A killed program loses nothing that it acknowledged. bench/kill/run.sh does it a hundred times and holds the time too.</summary>
public sealed class KillTests
{
    [Fact]
    public async Task Three_kills_lose_nothing()
    {
        var result = await KillStudy.RunAsync(Scratch.NewFolder(), 3, seed: 7);

        Assert.Equal((3, 0L, 0L, 0L), (result.Kills, result.Lost, result.Half, result.Gaps));
        Assert.InRange(result.Acknowledged, 4, long.MaxValue);

        // Two seconds is asked of a quiet machine; the tests share theirs.
        Assert.All(result.HealthySeconds, s => Assert.InRange(s, 0, 20));
    }
}
