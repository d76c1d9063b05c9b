using Tickover.Physics.Estimation;

namespace Tickover.Physics.Tests.Estimation;

public sealed class PosteriorTests
{
    private static readonly double Near = (1 + Math.Sqrt(3)) * Math.Exp(-Math.Sqrt(3));

    [Fact]
    public void One_parameter_and_one_reading_share_their_variances()
    {
        var posterior = new Posterior(new ResidualField([[0]], [1], 0, [0.5]), new double[,] { { 2 } }, [0], [3]);

        // 1/(2²/0.25 + 1/9)
        Assert.Equal(1 / (16 + 1 / 9.0), posterior.Covariance()[0, 0], 12);
    }

    [Fact]
    public void Two_readings_of_a_field_predict_between_them_as_worked_by_hand()
    {
        // a parameter held fast by its prior leaves the field alone: k = c(0.5 lengths), K = [[1.25, c], [c, 1.25]]
        var field = new ResidualField([[0], [1]], [1], 1, [0.5, 0.5]);
        var posterior = new Posterior(field, new double[,] { { 1 }, { 1 } }, [1, 2], [1e-9]);
        var half = (1 + Math.Sqrt(3) / 2) * Math.Exp(-Math.Sqrt(3) / 2);

        var there = posterior.Predict([[0.5]], new double[,] { { 1 } });

        Assert.Equal(half * 3 / (1.25 + Near), there.Correction[0], 10);
        Assert.Equal(Math.Sqrt(1 - 2 * half * half / (1.25 + Near)), there.Deviation(0), 8);
    }

    [Fact]
    public void Far_from_every_reading_only_the_parameters_and_the_whole_field_are_left()
    {
        var posterior = new Posterior(new ResidualField([[0], [1]], [1], 0.3, [0.1, 0.1]), new double[,] { { 1 }, { 1 } }, [0.2, 0.1], [5]);

        var far = posterior.Predict([[1000]], new double[,] { { 2 } });

        Assert.Equal(0, far.Correction[0], 12);
        Assert.Equal(0.09 + 4 * posterior.Covariance()[0, 0], far.Covariance[0, 0], 10);
    }

    [Fact]
    public void Leaving_leftis_what_a_fit_withleftthe_group_predicts()
    {
        var line = new Line(seed: 7, readings: 12, fieldDeviation: 0.2, noise: 0.1);
        int[] groups = [0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5];
        var fit = line.Fit([.. Enumerable.Range(0, 12)]);

        var (errors, deviations) = fit.Posterior.LeaveOut(groups, line.Noise, fit.Parameters);

        foreach (var group in groups.Distinct())
        {
            int[] left = [.. Enumerable.Range(0, 12).Where(i => groups[i] == group)];
            var without = line.Fit([.. Enumerable.Range(0, 12).Except(left)]);
            var prediction = without.Posterior.Predict([.. left.Select(i => line.Places[i])], line.Jacobian(left));
            for (var k = 0; k < left.Length; k++)
            {
                var i = left[k];
                var predicted = line.At(without.Parameters, i) + prediction.Correction[k];
                Assert.Equal(line.Readings[i] - predicted, errors[i], 8);
                Assert.Equal(Math.Sqrt(prediction.Covariance[k, k] + line.Noise[i] * line.Noise[i]), deviations[i], 8);
            }
        }
    }

    [Fact]
    public void Ninety_per_cent_bands_cover_ninety_per_cent_of_what_is_simulated()
    {
        const double z90 = 1.6449;
        var (held, all) = (0, 0);
        for (var seed = 0; seed < 150; seed++)
        {
            var line = new Line(seed, readings: 20, fieldDeviation: 0.3, noise: 0.1);
            var fit = line.Fit([.. Enumerable.Range(0, 20).Where(i => i % 2 == 0)]);
            int[] left = [.. Enumerable.Range(0, 20).Where(i => i % 2 == 1)];
            var prediction = fit.Posterior.Predict([.. left.Select(i => line.Places[i])], line.Jacobian(left));
            for (var k = 0; k < left.Length; k++)
            {
                var deviation = Math.Sqrt(prediction.Covariance[k, k] + line.Noise[left[k]] * line.Noise[left[k]]);
                var error = line.Readings[left[k]] - line.At(fit.Parameters, left[k]) - prediction.Correction[k];
                held += Math.Abs(error) <= z90 * deviation ? 1 : 0;
                all++;
            }
        }

        // 1 500 points, ten to a line and alike there: three standard deviations of 150 lines are some 4 %
        Assert.InRange((double)held / all, 0.86, 0.94);
    }

    /// <summary>Readings of a + b x with a smooth field and noise on top, parameters drawn from their priors.</summary>
    private sealed class Line
    {
        private static readonly double[] Prior = [2, 0.5];
        private readonly double _fieldDeviation;

        internal Line(int seed, int readings, double fieldDeviation, double noise)
        {
            var random = new Random(seed);
            _fieldDeviation = fieldDeviation;
            Places = [.. Enumerable.Range(0, readings).Select(i => new[] { i * 0.4 })];
            Noise = [.. Enumerable.Repeat(noise, readings)];
            double[] truth = [Prior[0] * Normal(random), Prior[1] * Normal(random)];
            var smooth = Smooth(random, readings);
            Readings = [.. Enumerable.Range(0, readings).Select(i => At(truth, i) + smooth[i] + noise * Normal(random))];
        }

        internal double[][] Places { get; }

        internal double[] Noise { get; }

        internal double[] Readings { get; }

        internal double At(IReadOnlyList<double> b, int i) => b[0] + b[1] * Places[i][0];

        internal double[,] Jacobian(int[] rows)
        {
            var jacobian = new double[rows.Length, 2];
            for (var k = 0; k < rows.Length; k++)
            {
                (jacobian[k, 0], jacobian[k, 1]) = (1, Places[rows[k]][0]);
            }

            return jacobian;
        }

        internal (Posterior Posterior, IReadOnlyList<double> Parameters) Fit(int[] rows)
        {
            var field = new ResidualField([.. rows.Select(i => Places[i])], [1], _fieldDeviation, [.. rows.Select(i => Noise[i])]);
            double[] Rows(double[] b) => [.. field.Whiten([.. rows.Select(i => Readings[i] - At(b, i))]), b[0] / Prior[0], b[1] / Prior[1]];
            var found = LeastSquares.Solve(Rows, [0, 0]).Parameters;
            return (new Posterior(field, Jacobian(rows), [.. rows.Select(i => Readings[i] - At(found, i))], Prior), found);
        }

        // A draw of the field itself: whitening run backwards, row by row.
        private double[] Smooth(Random random, int count)
        {
            var field = new ResidualField(Places, [1], _fieldDeviation, [.. Enumerable.Repeat(1e-6, count)]);
            var (draw, wanted) = (new double[count], Enumerable.Range(0, count).Select(_ => Normal(random)).ToArray());
            for (var i = 0; i < count; i++)
            {
                draw[i] = 0;
                var zero = field.Whiten(draw)[i];
                draw[i] = 1;
                var slope = field.Whiten(draw)[i] - zero;
                draw[i] = (wanted[i] - zero) / slope;
            }

            return draw;
        }

        private static double Normal(Random random) =>
            Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
    }
}
