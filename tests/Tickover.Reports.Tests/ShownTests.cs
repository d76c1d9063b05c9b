namespace Tickover.Reports.Tests;

public sealed class ShownTests
{
    [Theory]
    [InlineData(1.044, "1.04")]
    [InlineData(0.9, "0.90")]
    [InlineData(double.NaN, "none")]
    public void Lambda_has_two_digits(double lambda, string text) => Assert.Equal(text, Shown.Lambda(lambda));

    [Theory]
    [InlineData(-0.02, "\u22120.02")]
    [InlineData(0.1, "+0.10")]
    [InlineData(-0.001, "0.00")]
    [InlineData(0.004, "0.00")]
    public void A_difference_has_its_sign_and_a_true_minus(double difference, string text) =>
        Assert.Equal(text, Shown.LambdaDifference(difference));

    [Theory]
    [InlineData(2754, "2,750")]
    [InlineData(600, "600")]
    [InlineData(12345, "12,350")]
    public void Speed_goes_to_ten_with_a_comma(double rpm, string text) => Assert.Equal(text, Shown.Speed(rpm));

    [Fact]
    public void A_unit_follows_after_a_narrow_space() => Assert.Equal("2,750\u202Frpm", Shown.SpeedWithUnit(2750));

    [Theory]
    [InlineData(14.62, "14.6")]
    [InlineData(0.9751, "0.975")]
    [InlineData(148.2, "148")]
    [InlineData(0.021, "0.02")]
    [InlineData(1.234, "1.23")]
    public void Flow_has_two_or_three_figures(double hourly, string text) => Assert.Equal(text, Shown.Flow(hourly / 3600));

    [Theory]
    [InlineData(11.3, "11°")]
    [InlineData(2.4, "2.5°")]
    [InlineData(0, "0°")]
    public void An_opening_is_a_whole_degree_or_half_of_one(double degrees, string text) => Assert.Equal(text, Shown.Opening(degrees));

    [Theory]
    [InlineData(2.25, "2¼")]
    [InlineData(0.5, "½")]
    [InlineData(0, "0")]
    [InlineData(1.94, "2")]
    [InlineData(-0.625, "\u2212⅝")]
    public void Turns_are_eighths(double turns, string text) => Assert.Equal(text, Shown.Turns(turns));

    [Theory]
    [InlineData(0.00135, "135")]
    [InlineData(0.000475, "47.5")]
    public void A_jet_is_its_number(double metres, string text) => Assert.Equal(text, Shown.Jet(metres));

    [Fact]
    public void A_range_of_one_figure_is_that_figure()
    {
        Assert.Equal("0.88 to 0.95", Shown.Range("0.88", "0.95"));
        Assert.Equal("0.90", Shown.Range("0.90", "0.90"));
        Assert.Equal("4.5\u202Fmm", Shown.Millimetres(0.0045));
        Assert.Equal("83\u202F%", Shown.Percent(0.83));
    }
}
