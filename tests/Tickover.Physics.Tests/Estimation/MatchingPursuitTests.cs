using CsCheck;
using Tickover.Physics.Estimation;

namespace Tickover.Physics.Tests.Estimation;

public sealed class MatchingPursuitTests
{
    [Fact]
    public void Two_columns_of_five_that_made_the_readings_are_found() =>
        Gen.Select(Gen.Double[-1, 1].Array[40], Gen.Double[0.5, 2], Gen.Double[0.5, 2]).Sample((numbers, first, second) =>
        {
            double[][] columns = [.. numbers.Chunk(8)];
            double[] readings = [.. columns[1].Zip(columns[3], (a, b) => first * a - second * b)];
            var pursuit = new MatchingPursuit(readings, columns);

            // A third column may do better than either alone; the pair leaves nothing.
            return pursuit.Left([1, 3]) < 1e-18 * (1 + readings.Sum(r => r * r)) * 1e6 && pursuit.Left([1]) >= pursuit.Left([1, 3]);
        }, iter: 200);

    [Fact]
    public void The_best_first_column_is_taken_and_none_that_promises_nothing()
    {
        var pursuit = new MatchingPursuit([3, 4, 0], [[1, 0, 0], [0, 1, 0], [0, 0, 1]]);

        Assert.Equal(25, pursuit.Left([]), 1e-12);
        Assert.Equal(1, pursuit.Next([], [0, 1, 2], 0.97)); // leaves 9 of 25
        Assert.Equal(0, pursuit.Next([1], [0, 1, 2], 0.97));
        Assert.Null(pursuit.Next([], [2], 0.97));
        Assert.Null(pursuit.Next([0], [0], 0.97));
    }

    [Fact]
    public void Columns_are_as_long_as_the_readings() => Assert.Throws<ArgumentException>(() => new MatchingPursuit([1, 2], [[1]]));
}
