using Tickover.Physics.Estimation;

namespace Tickover.Physics.Tests.Estimation;

public sealed class ResidualFieldTests
{
    private static readonly double[][] Two = [[0], [1]];

    // Matérn 3/2 at one length: (1 + √3) exp(−√3)
    private static readonly double Near = (1 + Math.Sqrt(3)) * Math.Exp(-Math.Sqrt(3));

    [Fact]
    public void Two_readings_likelihood_is_that_of_a_pair_of_correlated_normals()
    {
        var field = new ResidualField(Two, [1], 1, [0.5, 0.5]);

        // K = [[1.25, c], [c, 1.25]]
        var determinant = 1.25 * 1.25 - Near * Near;
        var square = (1.25 * 4 + 1.25 * 1 - 2 * Near * 2 * -1) / determinant;
        Assert.Equal(-0.5 * square - 0.5 * Math.Log(determinant), field.LogLikelihood([2, -1]), 12);
    }

    [Fact]
    public void Whitened_residuals_have_the_square_of_the_likelihood()
    {
        var field = new ResidualField(Two, [1], 1, [0.5, 0.5]);

        var whitened = field.Whiten([2, -1]);

        var determinant = 1.25 * 1.25 - Near * Near;
        Assert.Equal((1.25 * 5 + 4 * Near) / determinant, whitened[0] * whitened[0] + whitened[1] * whitened[1], 12);
        Assert.Equal(2 / Math.Sqrt(1.25), whitened[0], 12);
    }

    [Fact]
    public void Without_a_field_whitening_divides_by_each_readings_error() =>
        Assert.Equal([4.0, -2], new ResidualField(Two, [1], 0, [0.5, 0.5]).Whiten([2, -1]));

    [Fact]
    public void A_hundred_readings_of_one_place_are_not_a_hundred_proofs()
    {
        double[][] same = [.. Enumerable.Repeat(new[] { 3.0 }, 100)];
        var alone = new Posterior(new ResidualField([[3.0]], [1], 0.05, [0.01]), new double[,] { { 1 } }, [0], [1]);
        var often = new Posterior(
            new ResidualField(same, [1], 0.05, [.. Enumerable.Repeat(0.01, 100)]), Column(Enumerable.Repeat(1.0, 100)), new double[100], [1]);

        // the field's own 0.05 is never averaged away
        Assert.InRange(Math.Sqrt(often.Covariance()[0, 0]), 0.0499, Math.Sqrt(alone.Covariance()[0, 0]));
    }

    private static double[,] Column(IEnumerable<double> values)
    {
        double[] all = [.. values];
        var column = new double[all.Length, 1];
        for (var i = 0; i < all.Length; i++)
        {
            column[i, 0] = all[i];
        }

        return column;
    }
}
