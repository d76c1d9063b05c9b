using Tickover.Physics.Estimation;

namespace Tickover.Physics.Tests.Estimation;

public sealed class LeastSquaresTests
{
    private static readonly double[] Readings = [1, 2, 3, 4, 100];

    [Fact]
    public void A_mean_is_found_in_one_parameter()
    {
        var found = LeastSquares.Solve(b => [.. Readings.Select(y => y - b[0])], [0]);

        Assert.Equal(22, found.Parameters[0], 8);
        Assert.Equal(0.5 * (441 + 400 + 361 + 324 + 78 * 78), found.Cost, 6);
        Assert.All(found.Weights, w => Assert.Equal(1, w));
    }

    [Fact]
    public void Huber_lets_one_wild_reading_pull_no_harder_than_its_limit()
    {
        // 100 lies beyond the limit of 2 and pulls with 2, whatever it is: (1 + 2 + 3 + 4 - 4b) + 2 = 0
        var found = LeastSquares.Solve(b => [.. Readings.Select(y => y - b[0])], [0], new LeastSquaresSettings { HuberLimit = 2 });

        Assert.Equal(3, found.Parameters[0], 6);
        Assert.Equal(2 / 97.0, found.Weights[4], 6);
        Assert.Equal(0.5 * (4 + 1 + 0 + 1) + 2 * (97 - 1), found.Cost, 6);
    }

    [Fact]
    public void A_prior_is_a_row_and_keeps_its_full_weight_beyond_the_robust_rows()
    {
        // readings 10 and 10 with deviation 1, prior 0 with deviation 0.5: (10 + 10)/(1 + 1 + 4), far beyond a limit of 100 only the prior's row would be
        var found = LeastSquares.Solve(b => [10 - b[0], 10 - b[0], -b[0] / 0.5], [5], new LeastSquaresSettings { HuberLimit = 100, RobustRows = 2 });

        Assert.Equal(20 / 6.0, found.Parameters[0], 8);
    }

    [Fact]
    public void Rows_after_the_robust_ones_are_never_weighed_down()
    {
        var found = LeastSquares.Solve(b => [1 - b[0], (50 - b[0]) * 3], [0], new LeastSquaresSettings { HuberLimit = 0.1, RobustRows = 1 });

        Assert.Equal(1, found.Weights[1]);
        Assert.InRange(found.Parameters[0], 49.9, 50);
    }

    [Fact]
    public void A_step_to_where_the_model_has_no_answer_is_taken_back()
    {
        // Newton's step from 9 lands below zero, where the root is not a number
        var found = LeastSquares.Solve(b => [Math.Sqrt(b[0]) - 0.1], [9]);

        Assert.Equal(0.01, found.Parameters[0], 9);
        Assert.True(double.IsFinite(found.Cost));
    }

    [Fact]
    public void Where_nothing_leads_down_it_says_so_or_stays()
    {
        var found = LeastSquares.Solve(_ => [1], [3]);

        Assert.Equal(3, found.Parameters[0], 6);
        Assert.NotEqual(EstimateEnding.CostSettled, found.Ending);
    }

    [Fact]
    public void A_parameter_that_changes_nothing_stays_where_it_was()
    {
        var found = LeastSquares.Solve(b => [b[0] - 2, 2 * (b[0] - 2)], [0, 7]);

        Assert.Equal(2, found.Parameters[0], 9);
        Assert.Equal(7, found.Parameters[1], 9);
    }

    [Fact]
    public void The_steps_allowed_are_kept_to()
    {
        var found = LeastSquares.Solve(Rosenbrock, [-1.2, 1], new LeastSquaresSettings { MaximumSteps = 2 });

        Assert.Equal(EstimateEnding.OutOfSteps, found.Ending);
        Assert.Equal(2, found.Steps);
    }

    [Fact]
    public void Rosenbrocks_valley_is_followed_to_its_end()
    {
        var found = LeastSquares.Solve(Rosenbrock, [-1.2, 1]);

        Assert.Equal(1, found.Parameters[0], 8);
        Assert.Equal(1, found.Parameters[1], 8);
    }

    [Fact]
    public void The_work_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        var computed = 0;

        Assert.Throws<OperationCanceledException>(() => LeastSquares.Solve(
            b =>
            {
                if (++computed == 20)
                {
                    stop.Cancel();
                }

                return Rosenbrock(b);
            },
            [-1.2, 1],
            cancellation: stop.Token));
        Assert.InRange(computed, 20, 60);
    }

    [Fact]
    public void A_start_without_an_answer_is_refused()
    {
        Assert.Throws<ArgumentException>(() => LeastSquares.Solve(b => [Math.Sqrt(b[0])], [-1]));
        Assert.Throws<ArgumentException>(() => LeastSquares.Solve(_ => [1], []));
        Assert.Throws<ArgumentException>(() => LeastSquares.Solve(_ => [], [1]));
    }

    [Fact]
    public void It_counts_every_time_the_model_was_computed()
    {
        var computed = 0;

        var found = LeastSquares.Solve(
            b =>
            {
                computed++;
                return Rosenbrock(b);
            },
            [-1.2, 1]);

        Assert.Equal(computed, found.Evaluations);
    }

    private static double[] Rosenbrock(double[] b) => [10 * (b[1] - b[0] * b[0]), 1 - b[0]];
}
