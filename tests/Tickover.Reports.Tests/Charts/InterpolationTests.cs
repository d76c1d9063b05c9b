using CsCheck;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Tests.Charts;

public sealed class InterpolationTests
{
    [Fact]
    public void It_stays_between_its_neighbours() =>
        Gen.Double[-5, 5].Array[3, 12].Sample(values =>
        {
            double[] x = [.. Enumerable.Range(0, values.Length).Select(i => i + 0.1 * Math.Sin(i))];
            var at = Refinement.Even(x[0], x[^1], 101);
            var result = new double[at.Length];

            MonotoneCubic.Interpolate(x, values, at, result);

            for (var k = 0; k < at.Length; k++)
            {
                var cell = Math.Min(values.Length - 2, Array.FindLastIndex(x, v => v <= at[k]));
                Assert.InRange(
                    result[k], Math.Min(values[cell], values[cell + 1]) - 1e-12, Math.Max(values[cell], values[cell + 1]) + 1e-12);
            }
        });

    [Fact]
    public void It_goes_through_what_is_given_and_keeps_a_straight_line_straight()
    {
        double[] x = [0, 1, 3, 4], line = [1, 3, 7, 9], bent = [0, 2, 1, 5];
        var result = new double[4];

        MonotoneCubic.Interpolate(x, bent, x, result);
        Assert.Equal(bent, result);

        MonotoneCubic.Interpolate(x, line, [0.5, 2, 3.5, 4], result);
        Assert.All(result.Zip([2.0, 5, 8, 9]), p => Assert.Equal(p.Second, p.First, 1e-12));
    }

    [Fact]
    public void A_refined_field_has_no_extremes_of_its_own() =>
        Gen.Double[0, 1].Array[20].Sample(values =>
        {
            var coarse = Fields.Of(5, 4, (_, _) => 0).Map((i, j) => values[i * 4 + j]);

            var fine = Refinement.Refine(coarse, Refinement.Even(-1, 1, 40), Refinement.Even(-1, 1, 30));

            Assert.All(fine.Values.Cast<double>(), v => Assert.InRange(v, values.Min() - 1e-12, values.Max() + 1e-12));
            Assert.Equal(coarse.Values[0, 0], fine.Values[0, 0], 1e-12);
            Assert.Equal(coarse.Values[4, 3], fine.Values[39, 29], 1e-12);
        });

    [Fact]
    public void Gaps_are_filled_from_beside_them()
    {
        var holed = Fields.Of(4, 4, (x, _) => x < 0 ? 2 : double.NaN);

        Assert.All(Refinement.WithoutGaps(holed).Values.Cast<double>(), v => Assert.Equal(2, v));
        Assert.All(Refinement.WithoutGaps(Fields.Of(3, 3, (_, _) => double.NaN)).Values.Cast<double>(), v => Assert.Equal(0, v));
    }

    [Fact]
    public void A_field_is_read_between_its_places_and_not_outside()
    {
        var plane = Fields.Of(5, 5, (x, y) => x + 2 * y);

        Assert.Equal(0.3 + 2 * -0.7, plane.At(new ChartPoint(0.3, -0.7)), 1e-12);
        Assert.Equal(3, plane.At(new ChartPoint(1, 1)), 1e-12);
        Assert.True(double.IsNaN(plane.At(new ChartPoint(1.01, 0))));
    }
}
