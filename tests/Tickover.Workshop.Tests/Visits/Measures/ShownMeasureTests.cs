using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Tests.Visits.Measures;

public class ShownMeasureTests
{
    [Theory]
    [InlineData("idleAirflow", 3.64 / 3600, UnitChoice.Metric, "3.6\u2009kg/h")]
    [InlineData("idleAirflow", 3.6 / 3600, UnitChoice.Imperial, "7.9\u2009lb/h")]
    [InlineData("lambdaIdle", 0.9, UnitChoice.Metric, "0.90")]
    [InlineData("carbonMonoxide", 0.0346, UnitChoice.Metric, "3.5\u2009%")]
    [InlineData("idleSpeed", 903 * Math.PI / 30, UnitChoice.Metric, "900\u2009rpm")]
    [InlineData("idleTiming", -7 * Math.PI / 180, UnitChoice.Metric, "\u22127°")]
    [InlineData("idleTiming", -0.1 * Math.PI / 180, UnitChoice.Metric, "0°")]
    [InlineData("drained", 0.0234, UnitChoice.Metric, "23\u2009L")]
    [InlineData("drained", 0.0076, UnitChoice.Metric, "7.5\u2009L")]
    [InlineData("senderHalf", 33.26, UnitChoice.Metric, "33.3\u2009Ω")]
    [InlineData("senderHalf", 2.4, UnitChoice.Metric, "2.40\u2009Ω")]
    [InlineData("senderHalf", 243.4, UnitChoice.Metric, "243\u2009Ω")]
    [InlineData("mixtureTurns", 2.5, UnitChoice.Metric, "2½\u2009turns")]
    [InlineData("mixtureTurns", 0.13, UnitChoice.Metric, "⅛\u2009turn")]
    [InlineData("mixtureTurns", 1, UnitChoice.Metric, "1\u2009turn")]
    [InlineData("tankWall", 0.00082, UnitChoice.Metric, "0.8\u2009mm")]
    [InlineData("leakDown", 0.124, UnitChoice.Metric, "12\u2009%")]
    [InlineData("mainJet", 0.00135, UnitChoice.Imperial, "135")]
    [InlineData("needleShown", 0.38, UnitChoice.Metric, "3/8")]
    [InlineData("needleShown", 0, UnitChoice.Metric, "E")]
    [InlineData("needleShown", 1, UnitChoice.Metric, "F")]
    [InlineData("fuelPressure", 20684.27, UnitChoice.Imperial, "3.0\u2009psi")]
    [InlineData("idleAirflow", double.NaN, UnitChoice.Metric, "")]
    public void A_value_is_shown_with_the_digits_of_its_instrument(string key, double si, UnitChoice units, string shown) =>
        Assert.Equal(shown, ShownMeasure.Text(MeasureCatalogue.Find(key)!, si, units));

    [Theory]
    [InlineData("idleAirflow", 3.6 / 3600, 0.25 / 3600, "3.6 ±0.25\u2009kg/h")]
    [InlineData("idleAirflow", 3.6 / 3600, 0.1 / 3600, "3.6 ±0.1\u2009kg/h")]
    [InlineData("oilTemperature", 353.15, 2, "80 ±2\u2009°C")]
    public void A_band_stands_close_to_its_figure(string key, double si, double band, string shown) =>
        Assert.Equal(shown, ShownMeasure.Text(MeasureCatalogue.Find(key)!, si, band, UnitChoice.Metric));

    [Theory]
    [InlineData("idleAirflow", 0.4 / 3600, "+0.4\u2009kg/h")]
    [InlineData("idleAirflow", -0.4 / 3600, "\u22120.4\u2009kg/h")]
    [InlineData("idleAirflow", 0, "0.0\u2009kg/h")]
    [InlineData("oilTemperature", -2, "\u22122\u2009°C")]
    public void A_difference_has_its_sign(string key, double difference, string shown) =>
        Assert.Equal(shown, ShownMeasure.Difference(MeasureCatalogue.Find(key)!, difference, UnitChoice.Metric));

    [Theory]
    [InlineData(0.084, "+8\u2009%")]
    [InlineData(-0.084, "\u22128\u2009%")]
    [InlineData(0.001, "0\u2009%")]
    public void A_part_of_the_mean_is_whole_percent(double part, string shown) => Assert.Equal(shown, ShownMeasure.Percent(part));
}
