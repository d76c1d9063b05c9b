using CsCheck;
using Tickover.Physics.Walls;

namespace Tickover.Physics.Tests.Walls;

public sealed class PitPosteriorTests
{
    private static readonly double[] Eight = [0.21e-3, 0.26e-3, 0.29e-3, 0.33e-3, 0.36e-3, 0.42e-3, 0.47e-3, 0.58e-3];

    [Fact]
    public void With_measured_depths_only_it_is_the_closed_form()
    {
        // Integrated over λ by hand the chance is Σ p(α) (1 + T e^(−x/α)/S)^(−r), p(α) ∝ α^(−r) e^(−Σx/α) S^(−r) dα.
        var ours = PitPosterior.Of(Sample(Eight))!;

        Assert.All(
            new[] { (0.4e-3, 5.0), (0.8e-3, 20.0), (1.2e-3, 100.0), (2.0e-3, 1.0) },
            c => Assert.Equal(ClosedForm(Eight, c.Item1, c.Item2), ours.Below(c.Item1, c.Item2), 2e-4));
    }

    [Fact]
    public void Three_readings_give_a_wide_band_and_thirty_a_narrow_one()
    {
        var thirty = Enumerable.Range(1, 30).Select(i => new Gumbel(0.35e-3, 0.1e-3).Depth(i / 31.0, 1)).ToArray();
        double[] three = [thirty[4], thirty[14], thirty[24]];

        var (few, many) = (PitPosterior.Of(Sample(three))!, PitPosterior.Of(Sample(thirty))!);

        Assert.True(Width(few.Deepest(20)) > 2 * Width(many.Deepest(20)));
        Assert.Equal(ValidityKind.Extrapolated, few.Validity.Kind);
        Assert.Equal(ValidityKind.Inside, many.Validity.Kind);
    }

    [Fact]
    public void Two_readings_give_none() => Assert.Null(PitPosterior.Of(Sample([0.2e-3, 0.3e-3])));

    [Fact]
    public void A_larger_area_not_read_holds_a_deeper_pit() => Gen.Double[0.5, 200].Sample(patches =>
    {
        var posterior = PitPosterior.Of(Sample(Eight))!;
        var (small, large) = (posterior.Deepest(patches), posterior.Deepest(patches * 2));
        return large.LowMetres > small.LowMetres && large.MiddleMetres > small.MiddleMetres && large.HighMetres > small.HighMetres;
    }, iter: 10);

    [Fact]
    public void Units_do_not_matter()
    {
        var (metres, millimetres) = (PitPosterior.Of(Sample(Eight))!, PitPosterior.Of(new PitSample { DepthsMetres = [.. Eight.Select(x => 1000 * x)], StepMetres = 0.01 })!);

        Assert.Equal(1000 * metres.Deepest(30).HighMetres, millimetres.Deepest(30).HighMetres, 1e-9);
    }

    [Fact]
    public void Patches_too_shallow_to_measure_pull_the_depths_down_and_holes_pull_them_up()
    {
        var plain = PitPosterior.Of(Sample(Eight))!.Deepest(20).MiddleMetres;
        var shallow = PitPosterior.Of(Sample(Eight) with { ShallowerThanMetres = [0.2e-3, 0.2e-3, 0.2e-3, 0.2e-3] })!.Deepest(20).MiddleMetres;
        var deep = PitPosterior.Of(Sample(Eight) with { DeeperThanMetres = [1.0e-3, 1.0e-3] })!.Deepest(20).MiddleMetres;

        Assert.NotEqual(plain, shallow);
        Assert.True(deep > plain);
        Assert.True(PitPosterior.Of(Sample(Eight) with { ShallowerThanMetres = [0.2e-3, 0.2e-3, 0.2e-3, 0.2e-3] })!.Likeliest.LocationMetres < PitPosterior.Of(Sample(Eight))!.Likeliest.LocationMetres);
    }

    [Fact]
    public void Readings_all_alike_are_believed_no_further_than_the_gauge_rounds()
    {
        var band = PitPosterior.Of(new PitSample { DepthsMetres = [0.3e-3, 0.3e-3, 0.3e-3, 0.3e-3], StepMetres = 0.1e-3 })!.Deepest(10);

        Assert.True(band.LowMetres < band.MiddleMetres && band.MiddleMetres < band.HighMetres);
        Assert.True(band.HighMetres > 0.33e-3);
        Assert.True(band.HighMetres < 2e-3);
    }

    [Fact]
    public void The_likeliest_pair_is_near_the_greatest_likelihood()
    {
        var depths = Enumerable.Range(1, 40).Select(i => new Gumbel(0.35e-3, 0.1e-3).Depth(i / 41.0, 1)).ToArray();
        var (grid, exact) = (PitPosterior.Of(Sample(depths))!.Likeliest, GumbelEstimate.MaximumLikelihood(depths)!.Value);

        Assert.Equal(exact.LocationMetres, grid.LocationMetres, 0.02e-3);
        Assert.Equal(exact.ScaleMetres, grid.ScaleMetres, 0.01e-3);
    }

    [Fact]
    public void The_band_of_a_chance_holds_the_chance()
    {
        var posterior = PitPosterior.Of(Sample(Eight))!;
        var band = posterior.Deeper(new DepthBand(1e-3, 1e-3, 1e-3), 30);

        Assert.True(band.Low < band.Middle && band.Middle < band.High);
        Assert.Equal(1 - posterior.Below(1e-3, 30), band.Middle, 1e-12);
    }

    [Fact]
    public void Nothing_left_to_read_holds_no_pit() => Assert.Equal(1, PitPosterior.Of(Sample(Eight))!.Below(0.1e-3, 0), 1e-12);

    private static PitSample Sample(double[] depths) => new() { DepthsMetres = depths, StepMetres = 0.01e-3 };

    private static double Width(DepthBand band) => band.HighMetres - band.LowMetres;

    private static double ClosedForm(double[] x, double depth, double patches)
    {
        var (weight, sum) = (0.0, 0.0);
        for (var eta = -5.0; eta <= 7; eta += 0.01)
        {
            var alpha = 0.1e-3 * Math.Exp(eta);
            var logS = -x.Min() / alpha + Math.Log(x.Sum(v => Math.Exp(-(v - x.Min()) / alpha)));
            var p = Math.Exp((1 - x.Length) * eta - x.Sum() / alpha - x.Length * logS);
            weight += p;
            sum += p * Math.Pow(1 + patches * Math.Exp(-depth / alpha - logS), -x.Length);
        }

        return sum / weight;
    }
}
