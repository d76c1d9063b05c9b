using CsCheck;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Tests.Flow;

public sealed class IncompressibleOrificeTests
{
    [Fact]
    public void A_square_millimetre_of_petrol_at_5_kilopascals_by_hand() =>
        Assert.Equal(2.7295e-3, IncompressibleOrifice.MassFlow(5_000, 1e-6, 745), 7); // 1e-6 sqrt(2 · 745 · 5000) = 1e-6 · 2729.5

    [Fact]
    public void Drop_and_flow_and_area_turn_into_each_other() =>
        Gen.Select(Gen.Double[1.01, 1e5], Gen.Double[1e-8, 1e-3], Gen.Double[0.5, 1_000]).Sample((drop, area, rho) =>
        {
            var flow = IncompressibleOrifice.MassFlow(drop, area, rho);
            return Math.Abs(IncompressibleOrifice.PressureDrop(flow, area, rho) / drop - 1) < 1e-12
                && Math.Abs(IncompressibleOrifice.EffectiveArea(flow, drop, rho) / area - 1) < 1e-12;
        });

    [Fact]
    public void Flow_is_antisymmetric_and_nothing_at_rest() =>
        Gen.Double[-1e5, 1e5].Sample(drop =>
            IncompressibleOrifice.MassFlow(-drop, 1e-6, 745) == -IncompressibleOrifice.MassFlow(drop, 1e-6, 745)
            && IncompressibleOrifice.MassFlow(0, 1e-6, 745) == 0);

    [Fact]
    public void A_negative_flow_needs_a_negative_drop() =>
        Assert.Equal(-IncompressibleOrifice.PressureDrop(0.002, 1e-6, 745), IncompressibleOrifice.PressureDrop(-0.002, 1e-6, 745));

    [Fact]
    public void Two_alike_in_a_row_pass_as_much_as_one_of_0_707() =>
        Assert.Equal(1 / Math.Sqrt(2), IncompressibleOrifice.SeriesArea(1, 1), 12);

    [Fact]
    public void A_row_is_tighter_than_its_tightest_and_order_does_not_matter() =>
        Gen.Select(Gen.Double[1e-9, 1e-3], Gen.Double[1e-9, 1e-3]).Sample((one, other) =>
            IncompressibleOrifice.SeriesArea(one, other) < Math.Min(one, other)
            && IncompressibleOrifice.SeriesArea(one, other) == IncompressibleOrifice.SeriesArea(other, one));

    [Fact]
    public void Drops_in_a_row_add_up()
    {
        const double flow = 1e-3;
        var drops = IncompressibleOrifice.PressureDrop(flow, 1e-6, 745) + IncompressibleOrifice.PressureDrop(flow, 2e-6, 745);

        Assert.Equal(drops, IncompressibleOrifice.PressureDrop(flow, IncompressibleOrifice.SeriesArea(1e-6, 2e-6), 745), 9);
    }

    [Fact]
    public void One_shut_shuts_the_row() => Assert.Equal(0, IncompressibleOrifice.SeriesArea(1e-6, 0, 1e-6));

    [Fact]
    public void No_row_is_refused() => Assert.Throws<ArgumentException>(() => IncompressibleOrifice.SeriesArea());

    [Fact]
    public void A_shut_hole_has_no_drop_to_tell() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => IncompressibleOrifice.PressureDrop(1e-3, 0, 745));
}
