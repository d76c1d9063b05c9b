using CsCheck;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Tests.Flow;

public sealed class MixtureScrewTests
{
    [Fact]
    public void One_turn_out_by_hand() =>
        Assert.Equal(0.37025e-6, MixtureScrew.GapArea(1.3e-3, 0.13, 0.75e-3), 10); // gap 0.75 tan 0.13 = 0.098053; π · 0.098053 · 1.201947 mm²

    [Theory]
    [InlineData(0)]
    [InlineData(-1e-3)]
    public void Seated_it_is_shut(double lift) => Assert.Equal(0, MixtureScrew.GapArea(1.3e-3, 0.13, lift));

    [Fact]
    public void Far_out_the_seat_is_all_there_is() =>
        Assert.Equal(Circle.Area(1.3e-3), MixtureScrew.GapArea(1.3e-3, 0.13, 0.1));

    [Fact]
    public void Opening_never_closes_and_has_no_step_where_the_tip_leaves() =>
        Gen.Select(Gen.Double[0, 8e-3], Gen.Double[1e-9, 1e-6]).Sample((lift, more) =>
        {
            var step = MixtureScrew.GapArea(1.3e-3, 0.13, lift + more) - MixtureScrew.GapArea(1.3e-3, 0.13, lift);
            return step >= -1e-20 && step <= Math.PI * 1.3e-3 * Math.Tan(0.13) * more * (1 + 1e-6) + 1e-18;
        });
}
