using CsCheck;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Tests.Charts;

public sealed class AxisTests
{
    [Fact]
    public void A_place_goes_back_to_its_value() =>
        Gen.Double[0.3, 80].Sample(value =>
        {
            foreach (var kind in Enum.GetValues<ScaleKind>())
            {
                var scale = new Scale(kind, (0.3, 80), (500, 26));
                Assert.Equal(value, scale.ToValue(scale.ToPlace(value)), 1e-9);
            }
        });

    [Fact]
    public void The_root_gives_small_openings_more_room()
    {
        var scale = new Scale(ScaleKind.SquareRoot, (0, 81), (0, 9));

        Assert.Equal(1, scale.ToPlace(1), 1e-12);
        Assert.Equal(3, scale.ToPlace(9), 1e-12);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(-1, 4)]
    [InlineData(0, double.NaN)]
    public void Ends_that_make_no_axis_are_refused(double from, double to) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Scale(ScaleKind.SquareRoot, (from, to), (0, 1)));

    [Fact]
    public void Ticks_are_round_within_the_range_and_not_too_many() =>
        Gen.Select(Gen.Double[-1e4, 1e4], Gen.Double[0.01, 1e4], Gen.Int[2, 12]).Sample((from, span, most) =>
        {
            var ticks = Ticks.Nice(from, from + span, most);

            Assert.InRange(ticks.Count, 0, most);
            Assert.All(ticks, t => Assert.InRange(t, from - 1e-6 * span, from + span * (1 + 1e-6)));
        });

    [Fact]
    public void Ticks_are_the_decimals_a_person_would_write()
    {
        Assert.Equal([0.85, 0.9, 0.95, 1, 1.05], Ticks.Nice(0.85, 1.07, 6));
        Assert.Equal([1000, 2000, 3000, 4000, 5000, 6000], Ticks.Nice(600, 6600, 8));
        Assert.Equal([5.0], Ticks.Nice(5, 5, 4));
        Assert.Empty(Ticks.Nice(double.NaN, 1, 4));
    }

    [Fact]
    public void Ticks_of_the_opening_keep_apart()
    {
        var axis = new Scale(ScaleKind.SquareRoot, (0.3, 80), (500, 26));

        var places = Ticks.ForOpening(axis, 26).Select(axis.ToPlace).Order().ToArray();

        Assert.True(places.Length >= 6);
        Assert.All(places.Zip(places.Skip(1)), p => Assert.True(p.Second - p.First >= 26));
    }
}
