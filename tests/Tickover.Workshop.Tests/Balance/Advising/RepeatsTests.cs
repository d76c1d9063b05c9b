using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Advising;

namespace Tickover.Workshop.Tests.Balance.Advising;

/// <summary>What this meter on this car repeats to is learned from what was read twice with nothing moved.</summary>
public sealed class RepeatsTests
{
    private static readonly double[] Lower = [4.0, 4.0, 4.0, 4.0, 4.0, 4.0, 4.0, 4.0];

    [Theory]
    [InlineData(0.0, 0.05, 0.08)]
    [InlineData(0.14, 0.09, 0.11)]
    [InlineData(0.40, 0.18, 0.28)]
    public void Repeats_tell_what_a_reading_is_good_to(double apart, double least, double most)
    {
        double[] upper = [.. Lower.Select(a => a + apart)];
        var book = Books.TwoBanksBook(Books.Idle(Lower), Books.Idle(upper), Books.Idle(Lower), Books.Idle(upper));

        Assert.InRange(Repeats.Learn(book).AirDeviation(4), least, most);
    }

    [Fact]
    public void What_was_read_after_a_turn_is_no_repeat_and_looking_is_no_turn()
    {
        double[] upper = [.. Lower.Select(a => a + 0.4)];

        var turned = Repeats.Learn(Books.TwoBanksBook(Books.Idle(Lower), new Turned("stop:1", 0.125), Books.Idle(upper)));
        var looked = Repeats.Learn(Books.TwoBanksBook(Books.Idle(Lower), new LookedAt("stop:1", 0), Books.Idle(upper)));

        // the first barrel read again equal within each round counts either way
        Assert.True(turned.AirDeviation(4) <= Books.Meter.AirDeviation(4));
        Assert.True(looked.AirDeviation(4) > 1.3 * Books.Meter.AirDeviation(4));
    }

    [Fact]
    public void A_slip_of_the_pen_is_no_noise()
    {
        var slip = Books.But(Books.TwoBanks, 4.0, (3, 9.4));

        Assert.True(Repeats.Learn(Books.TwoBanksBook(Books.Idle(Lower), Books.Idle(slip))).AirDeviation(4) <= Books.Meter.AirDeviation(4));
    }
}
