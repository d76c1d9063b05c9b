using CsCheck;
using Tickover.Physics.Walls;

namespace Tickover.Physics.Tests.Walls;

public sealed class GumbelTests
{
    private static readonly double[] Eight = [0.21, 0.26, 0.29, 0.33, 0.36, 0.42, 0.47, 0.58];

    private static readonly Gen<Gumbel> Any = Gen.Select(Gen.Double[0.1, 2], Gen.Double[0.02, 0.5]).Select((l, a) => new Gumbel(l, a));

    [Fact]
    public void Eight_patches_worked_by_hand()
    {
        // Mean 0.365, deviation 0.12083; moments α = 0.12083 × 0.77970 = 0.09421, λ = 0.365 − 0.57722 × 0.09421 = 0.31062.
        var moments = GumbelEstimate.Moments(Eight)!.Value;
        var likelihood = GumbelEstimate.MaximumLikelihood(Eight)!.Value;

        Assert.Equal(0.09421, moments.ScaleMetres, 1e-5);
        Assert.Equal(0.31062, moments.LocationMetres, 1e-5);
        Assert.Equal(0.091699, likelihood.ScaleMetres, 1e-6);
        Assert.Equal(0.311654, likelihood.LocationMetres, 1e-6);
        Assert.Equal(0.6704, likelihood.CommonestDepth(50), 1e-4);
    }

    [Fact]
    public void The_greatest_likelihood_is_the_greatest()
    {
        var best = GumbelEstimate.MaximumLikelihood(Eight)!.Value;
        var there = best.LogLikelihood(Eight);

        Assert.All(new[] { -1e-3, 1e-3 }, step =>
        {
            Assert.True((best with { LocationMetres = best.LocationMetres + step }).LogLikelihood(Eight) < there);
            Assert.True((best with { ScaleMetres = best.ScaleMetres + step }).LogLikelihood(Eight) < there);
        });
    }

    [Fact]
    public void Depth_and_chance_undo_each_other() => Gen.Select(Any, Gen.Double[0.001, 0.999], Gen.Double[0.1, 1000])
        .Sample((g, chance, patches) => Math.Abs(g.Below(g.Depth(chance, patches), patches) - chance) < 1e-9);

    [Fact]
    public void Two_halves_of_an_area_are_the_area() => Gen.Select(Any, Gen.Double[0, 3], Gen.Double[0.1, 50])
        .Sample((g, depth, patches) => Math.Abs(g.Below(depth, patches) * g.Below(depth, patches) - g.Below(depth, 2 * patches)) < 1e-12);

    [Fact]
    public void The_return_level_is_passed_in_63_of_100_tanks() => Assert.Equal(Math.Exp(-1), new Gumbel(0.4, 0.1).Below(new Gumbel(0.4, 0.1).CommonestDepth(40), 40), 1e-12);

    [Fact]
    public void Depths_that_do_not_scatter_have_no_estimate()
    {
        Assert.Null(GumbelEstimate.MaximumLikelihood([0.3, 0.3, 0.3]));
        Assert.Null(GumbelEstimate.Moments([0.3]));
        Assert.Null(GumbelEstimate.WeightedMoments([]));
    }
}
