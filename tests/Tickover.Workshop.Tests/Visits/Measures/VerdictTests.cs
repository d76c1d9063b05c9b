using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Tests.Visits.Measures;

public class VerdictTests
{
    [Theory]
    [InlineData(5, 0.0, 4.0, 6.0, Verdict.Within)]
    [InlineData(4, 0.0, 4.0, 6.0, Verdict.Within)]
    [InlineData(3.9, 0.0, 4.0, 6.0, Verdict.Low)]
    [InlineData(6.1, 0.0, 4.0, 6.0, Verdict.High)]
    [InlineData(3.9, 0.2, 4.0, 6.0, Verdict.CannotBeTold)]
    [InlineData(4.1, 0.2, 4.0, 6.0, Verdict.CannotBeTold)]
    [InlineData(3.7, 0.2, 4.0, 6.0, Verdict.Low)]
    [InlineData(6.3, 0.2, 4.0, 6.0, Verdict.High)]
    [InlineData(5, 3.0, 4.0, 6.0, Verdict.CannotBeTold)]
    [InlineData(5, 0.1, null, 6.0, Verdict.Within)]
    [InlineData(5, 0.1, 6.0, null, Verdict.Low)]
    [InlineData(5, 0.1, null, null, Verdict.NotJudged)]
    [InlineData(double.NaN, 0.1, 4.0, 6.0, Verdict.NotJudged)]
    public void A_band_that_straddles_the_limit_decides_nothing(double value, double band, double? lowest, double? highest, Verdict verdict) =>
        Assert.Equal(verdict, Judgement.Judge(value, band, lowest, highest));

    [Theory]
    [InlineData("idleAirflow", "±0.25 kg/h", 3.6, 0.25)]
    [InlineData("idleAirflow", "0,25 kg/h", 3.6, 0.25)]
    [InlineData("idleAirflow", "+/- 5 %", 3.6, 0.18)]
    [InlineData("idleAirflow", "±0.25 kg/h or ±5 %", 3.6, 0.25)]
    [InlineData("idleAirflow", "±0.25 kg/h or ±5 %", 20, 1)]
    [InlineData("idleAirflow", "±2 °C; ±0.1 kg/h", 3.6, 0.1)]
    public void What_an_instrument_is_good_to_is_read_for_the_measure(string key, string goodTo, double kilogramsPerHour, double band) =>
        Assert.Equal(band, GoodToText.Read(MeasureCatalogue.Find(key)!, goodTo)!.Of(kilogramsPerHour / 3600) * 3600, 1e-9);

    [Theory]
    [InlineData("carbonMonoxide", "±0.1 %", 0.04, 0.001)]
    [InlineData("carbonMonoxide", "±5 % of reading", 0.04, 0.002)]
    [InlineData("oilTemperature", "±2 °C", 353.15, 2)]
    [InlineData("oilTemperature", "±9 °F", 353.15, 5)]
    [InlineData("lambdaIdle", "±0.02", 0.9, 0.02)]
    public void An_amount_of_temperature_is_a_difference_and_a_percent_of_gas_is_gas(string key, string goodTo, double si, double band) =>
        Assert.Equal(band, GoodToText.Read(MeasureCatalogue.Find(key)!, goodTo)!.Of(si), 1e-9);

    [Theory]
    [InlineData("idleAirflow", "")]
    [InlineData("idleAirflow", "±0.25")]
    [InlineData("idleAirflow", "±0.25 bar")]
    [InlineData("idleAirflow", "good")]
    [InlineData("idleAirflow", "±0 kg/h")]
    [InlineData("idleAirflow", "±0.25 kg/h or so")]
    [InlineData("idleAirflow", "2 % of full scale")]
    [InlineData("hoseMarking", "±0.25 kg/h")]
    public void What_says_nothing_for_the_measure_gives_no_band(string key, string goodTo) => Assert.Null(GoodToText.Read(MeasureCatalogue.Find(key)!, goodTo));

    [Theory]
    [InlineData(null, null, StandingState.NeverChecked, "never checked")]
    [InlineData("2026-03-03", null, StandingState.NeverChecked, "not checked before 3 March 2026")]
    [InlineData("2026-03-02", null, StandingState.InDate, "in date, checked 2 March 2026")]
    [InlineData("2025-03-01", "2026-03-02", StandingState.InDate, "in date, checked 1 March 2025")]
    [InlineData("2025-03-01", "2026-03-01", StandingState.Due, "due since 1 March 2026, checked 1 March 2025")]
    public void An_instrument_stands_as_it_stood_on_the_day(string? checkedOn, string? due, StandingState state, string words)
    {
        var instrument = new Tickover.Workshop.Visits.Instrument { CalibratedOn = Day(checkedOn), DueOn = Day(due) };

        Assert.Equal(new InstrumentStanding(state, words), InstrumentStanding.On(instrument, new DateOnly(2026, 3, 2)));
    }

    private static DateOnly? Day(string? text) => text is null ? null : DateOnly.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
