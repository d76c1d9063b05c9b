using CsCheck;
using Tickover.Physics.Metering;

namespace Tickover.Physics.Tests.Metering;

public sealed class WallFilmTests
{
    private static readonly WallFilm Warm = new(0.3, 0.5);
    private static readonly Gen<WallFilm> AnyFilm = Gen.Select(Gen.Double[0, 1], Gen.Double[0.05, 3], (x, tau) => new WallFilm(x, tau));

    [Fact]
    public void Doubled_metering_gives_1_7_at_once_and_1_89_after_half_a_second() // 0.7 · 2 + 0.15/0.5, and 2 − 0.3/e
    {
        var film = Warm.AtRest(1);

        Assert.Equal(1.7, Warm.Delivered(film, 2), 12);
        Assert.Equal(2 - 0.3 * Math.Exp(-1), Warm.Delivered(Warm.After(film, 2, 0.5), 2), 12);
        Assert.Equal(0.15, Warm.Owed(1), 12);
    }

    [Fact]
    public void What_goes_missing_is_what_the_walls_gain() => Gen.Select(AnyFilm, Gen.Double[0, 2], Gen.Double[0, 2]).Sample((film, before, after) =>
        Assert.Equal(film.Owed(after - before), film.AtRest(after) - film.AtRest(before), 12));

    [Fact]
    public void Two_steps_are_one_of_their_sum() => Gen.Select(AnyFilm, Gen.Double[0, 2], Gen.Double[0, 2], Gen.Double[0, 2]).Sample((film, metered, first, second) =>
        Assert.Equal(film.After(1, metered, first + second), film.After(film.After(1, metered, first), metered, second), 9));

    [Fact]
    public void No_fuel_is_lost() => Gen.Select(AnyFilm, Gen.Double[0, 2], Gen.Double[0.01, 2]).Sample((film, metered, seconds) =>
    {
        // Simpson over many steps against what the walls kept.
        const int steps = 2000;
        var (h, sum) = (seconds / steps, 0.0);
        for (var i = 0; i < steps; i++)
        {
            sum += h / 6 * (Out(i) + 4 * Out(i + 0.5) + Out(i + 1));
        }

        Assert.Equal(metered * seconds + 1 - film.After(1, metered, seconds), sum, 6);

        double Out(double step) => film.Delivered(film.After(1, metered, step * h), metered);
    });

    [Fact]
    public void Without_settling_all_arrives_at_once() => Assert.Equal(2, new WallFilm(0, 1).Delivered(0, 2), 12);

    [Theory]
    [InlineData(-0.1, 1)]
    [InlineData(1.1, 1)]
    [InlineData(0.5, 0)]
    [InlineData(double.NaN, 1)]
    public void Film_that_cannot_be_is_refused(double settling, double seconds) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new WallFilm(settling, seconds));
}
