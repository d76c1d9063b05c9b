using CsCheck;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Tests.Flow;

public sealed class SignedRootTests
{
    [Fact]
    public void It_is_the_root_outside_its_width()
    {
        Assert.Equal(3, SignedRoot.Of(9, 1));
        Assert.Equal(-3, SignedRoot.Of(-9, 1));
        Assert.Equal(1, SignedRoot.Of(1, 1));
    }

    [Fact]
    public void Half_way_in_it_is_0_59375() =>
        Assert.Equal(0.59375, SignedRoot.Of(0.5, 1), 12); // 1.25/2 - 0.25/8

    [Fact]
    public void At_nothing_its_slope_is_five_quarters_of_the_root_of_the_width() =>
        Assert.Equal(1.25 / Math.Sqrt(4), SignedRoot.Of(1e-9, 4) / 1e-9, 6);

    [Fact]
    public void It_rises_and_is_antisymmetric() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[1e-6, 1]).Sample((x, more) =>
            SignedRoot.Of(x + more, 1) > SignedRoot.Of(x, 1) && SignedRoot.Of(-x, 1) == -SignedRoot.Of(x, 1));
}
