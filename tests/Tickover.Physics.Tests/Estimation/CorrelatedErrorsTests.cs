using Tickover.Physics.Estimation;

namespace Tickover.Physics.Tests.Estimation;

/// <summary>Draws have the mean, the spread and the tie they were asked for.</summary>
public sealed class CorrelatedErrorsTests
{
    private const int Count = 20_000;

    [Fact]
    public void Draws_have_the_covariance_asked_for()
    {
        var draws = CorrelatedErrors.Draw(new[,] { { 4.0, 1.2 }, { 1.2, 1.0 } }, Count);

        // Four standard errors of each moment over 20 000 draws: 2/141, 4 sqrt(2)/141 and so on.
        Assert.Equal(0, draws.Average(d => d[0]), 0.06);
        Assert.Equal(4, draws.Average(d => d[0] * d[0]), 0.16);
        Assert.Equal(1, draws.Average(d => d[1] * d[1]), 0.04);
        Assert.Equal(1.2, draws.Average(d => d[0] * d[1]), 0.07);

        // 5 % of a normal lie beyond 1.645 deviations on either side.
        Assert.Equal(0.05, draws.Average(d => d[1] > 1.6449 ? 1.0 : 0), 0.007);
    }

    [Fact]
    public void Errors_that_are_one_and_the_same_come_out_alike()
    {
        var draws = CorrelatedErrors.Draw(new[,] { { 1.0, 1.0 }, { 1.0, 1.0 } }, 200);

        Assert.All(draws, d => Assert.Equal(d[0], d[1], 1e-3));
    }

    [Fact]
    public void The_same_question_gets_the_same_draws_and_no_error_none()
    {
        var covariance = new[,] { { 2.0 } };

        Assert.Equal(CorrelatedErrors.Draw(covariance, 9).SelectMany(d => d), CorrelatedErrors.Draw(covariance, 9).SelectMany(d => d));
        Assert.All(CorrelatedErrors.Draw(new double[3, 3], 5), d => Assert.All(d, e => Assert.Equal(0, e)));
    }

    [Fact]
    public void A_covariance_that_is_not_square_is_refused() =>
        Assert.Throws<ArgumentException>(() => CorrelatedErrors.Draw(new double[2, 3], 5));
}
