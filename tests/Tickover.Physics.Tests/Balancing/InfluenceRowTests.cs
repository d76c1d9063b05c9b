using Tickover.Physics.Balancing;

namespace Tickover.Physics.Tests.Balancing;

/// <summary>What a barrel's row learns of its screws.</summary>
public sealed class InfluenceRowTests
{
    [Fact]
    public void Level_follows_a_turn_by_the_gain_expected()
    {
        var row = new InfluenceRow(4, 0.01, [2, 0.5], [0.25, 0.1]);

        row.Turn(0, 0.25);

        Assert.Equal(4.5, row.Level, 12);
        Assert.Equal(0.01 + (0.25 * 0.25 * 0.25), row.LevelVariance, 12);
    }

    [Fact]
    public void Gain_is_learned_from_a_reading_after_a_turn()
    {
        var row = new InfluenceRow(4, 1e-6, [2], [0.5]);

        row.Turn(0, 0.5);
        row.Read(4.5, 1e-4);

        Assert.InRange(row.Gain(0), 0.99, 1.02);
        Assert.True(row.GainVariance(0) < 0.01);
    }

    [Fact]
    public void Reading_before_and_after_a_turn_counts_its_noise_once()
    {
        var row = new InfluenceRow(0, 100, [0], [100]);

        row.Read(4, 0.01);
        row.Turn(0, 1);
        row.Read(5, 0.01);

        // difference of two readings of variance 0.01 each: 0.02, hardly touched by the wide priors
        Assert.Equal(1, row.Gain(0), 2);
        Assert.Equal(0.02, row.GainVariance(0), 3);
    }

    [Fact]
    public void Loosened_gain_follows_a_new_reading_more_than_a_firm_one()
    {
        var (firm, loose) = (new InfluenceRow(0, 0, [1], [0.01]), new InfluenceRow(0, 0, [1], [0.01]));
        loose.Loosen(0, 10);

        foreach (var row in (InfluenceRow[])[firm, loose])
        {
            row.Turn(0, 1);
            row.Read(2, 0.01);
        }

        Assert.True(loose.Gain(0) > firm.Gain(0) + 0.3);
    }

    [Fact]
    public void Variances_never_turn_negative_over_many_readings()
    {
        var row = new InfluenceRow(4, 4, [1, -1, 0.2], [1, 1, 1]);
        var dice = new Random(3);
        for (var i = 0; i < 500; i++)
        {
            row.Turn(i % 3, (dice.NextDouble() - 0.5) / 4);
            row.Read(4 + dice.NextDouble(), 0.01);
            Assert.True(row.LevelVariance >= 0);
            Assert.All(Enumerable.Range(0, 3), j => Assert.True(row.GainVariance(j) >= 0));
        }
    }

    [Fact]
    public void Reading_that_could_teach_nothing_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new InfluenceRow(0, 0, [], []).Read(1, 0));
}
