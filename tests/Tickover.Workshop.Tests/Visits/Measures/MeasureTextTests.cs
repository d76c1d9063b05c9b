using System.Globalization;
using CsCheck;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Tests.Visits.Measures;

public class MeasureTextTests
{
    private static readonly MeasureDefinition[] Numbers = [.. MeasureCatalogue.All.Where(m => m.IsNumber)];

    [Theory]
    [InlineData("idleAirflow", "3,6", "3.6 kg/h", 0.001)]
    [InlineData("idleAirflow", "3.6 kg/h", "3.6 kg/h", 0.001)]
    [InlineData("idleAirflow", "1 g/s", "1 g/s", 0.001)]
    [InlineData("idleDepression", "10 inHg", "10 inHg", 33863.89)]
    [InlineData("fuelPressure", "3 psi", "3 psi", 20684.27)]
    [InlineData("mixtureTurns", "2½", "2 1/2 turns", 2.5)]
    [InlineData("mixtureTurns", "2 1/2", "2 1/2 turns", 2.5)]
    [InlineData("mixtureTurns", "2,5 turns", "2.5 turns", 2.5)]
    [InlineData("mixtureTurns", "⅞", "7/8 turns", 0.875)]
    [InlineData("choke", "1 1/4 in", "1 1/4 in", 0.03175)]
    [InlineData("choke", "1 1/4\"", "1 1/4 in", 0.03175)]
    [InlineData("mainJet", "135", "135", 0.00135)]
    [InlineData("mainJet", "1.35 mm", "1.35 mm", 0.00135)]
    [InlineData("idleTiming", "\u22127,5", "-7.5°", -0.1308997)]
    [InlineData("carbonMonoxide", "3.5", "3.5 %", 0.035)]
    [InlineData("hydrocarbons", "800", "800 ppm", 0.0008)]
    [InlineData("oilTemperature", "80", "80 °C", 353.15)]
    [InlineData("oilTemperature", "176 F", "176 °F", 353.15)]
    [InlineData("senderHalf", "33 ohms", "33 Ω", 33)]
    [InlineData("idleSpeed", "900 r/min", "900 rpm", 94.2477796)]
    [InlineData("fuelFlow", "500 cc/min", "500 cm³/min", 8.333333e-6)]
    [InlineData("needleShown", "half", "1/2", 0.5)]
    [InlineData("needleShown", "3/8", "3/8", 0.375)]
    public void What_is_typed_is_read_with_its_unit(string key, string text, string typed, double si)
    {
        var read = MeasureText.Read(Find(key), text, UnitChoice.Metric);

        Assert.Equal("", read.Problem);
        Assert.Equal(typed, read.Typed);
        Assert.Equal(si, read.Si!.Value, Math.Abs(si) * 1e-6);
    }

    [Theory]
    [InlineData("idleDepression", "17", "17 inHg", 57568.6)]
    [InlineData("fuelPressure", "3", "3 psi", 20684.27)]
    [InlineData("choke", "1.25", "1.25 in", 0.03175)]
    [InlineData("oilTemperature", "176", "176 °F", 353.15)]
    [InlineData("drained", "2", "2 gal", 0.00909218)]
    public void Without_a_unit_the_fields_unit_holds(string key, string text, string typed, double si)
    {
        var read = MeasureText.Read(Find(key), text, UnitChoice.Imperial);

        Assert.Equal(typed, read.Typed);
        Assert.Equal(si, read.Si!.Value, Math.Abs(si) * 1e-6);
    }

    [Theory]
    [InlineData("idleAirflow", "", "nothing is written")]
    [InlineData("idleAirflow", "   ", "nothing is written")]
    [InlineData("idleAirflow", "three", "is no figure")]
    [InlineData("idleAirflow", "NaN", "is no figure")]
    [InlineData("idleAirflow", "∞", "is no figure")]
    [InlineData("idleAirflow", "1e400", "is no unit")]
    [InlineData("idleAirflow", "٣", "is no figure")]
    [InlineData("idleAirflow", "3.6.1", "is no figure")]
    [InlineData("idleAirflow", "3,6,1", "is no figure")]
    [InlineData("idleAirflow", "3 to 4", "is a range")]
    [InlineData("idleAirflow", "3-4", "is a range")]
    [InlineData("idleAirflow", "3 – 4 kg/h", "is a range")]
    [InlineData("idleAirflow", "3.6 ±0.1", "holds two figures")]
    [InlineData("idleAirflow", "3.6 mm", "is no unit")]
    [InlineData("idleAirflow", "~3.6", "is no figure")]
    [InlineData("idleAirflow", "3.6 kg/h 3.6 kg/h 3.6 kg/h 3.6 kg/h 3.6 kg/h", "too long")]
    [InlineData("idleSpeed", "1,500", "two ways")]
    [InlineData("idleSpeed", "1.500 rpm", "two ways")]
    [InlineData("mixtureTurns", "1/0", "is no figure")]
    [InlineData("keys", "2.5", "not a whole number")]
    [InlineData("fuelAppearance", "fine", "is none of the words")]
    [InlineData("hoseMarking", "a\u0007b", "cannot be shown")]
    public void What_cannot_be_read_is_refused_in_words_that_name_the_field_and_keep_nothing(string key, string text, string words)
    {
        var measure = Find(key);

        var read = MeasureText.Read(measure, text, UnitChoice.Metric);

        Assert.False(read.IsRead);
        Assert.StartsWith($"{measure.Label}: ", read.Problem, StringComparison.Ordinal);
        Assert.Contains(words, read.Problem, StringComparison.Ordinal);
        Assert.Equal("", read.Typed);
        Assert.Null(read.Si);
    }

    [Fact]
    public void A_slipped_digit_is_asked_about_once_and_not_refused()
    {
        var read = MeasureText.Read(Find("idleAirflow"), "39", UnitChoice.Metric);

        Assert.True(read.IsRead);
        Assert.Equal("39 kg/h? Air at idle: usually 2 to 6\u2009kg/h. Keep it or mend it.", read.Question);
        Assert.Equal("", MeasureText.Read(Find("idleAirflow"), "3.9", UnitChoice.Metric).Question);
    }

    [Fact]
    public void A_choice_is_kept_in_its_own_spelling() => Assert.Equal("clear and bright", MeasureText.Read(Find("fuelAppearance"), " Clear and Bright ", UnitChoice.Metric).Typed);

    [Fact]
    public void Words_may_hold_mark_up_and_are_kept_as_typed() =>
        Assert.Equal("<b>SAE J30 R9</b> =1+1", MeasureText.Read(Find("hoseMarking"), " <b>SAE  J30 R9</b> =1+1 ", UnitChoice.Metric).Typed);

    [Fact]
    public void What_is_kept_reads_back_the_same_in_every_unit_and_culture()
    {
        var cultures = new[] { "", "de-DE", "en-US", "fr-FR", "ar-SA", "fa-IR", "sv-SE" }.Select(CultureInfo.GetCultureInfo).ToArray();
        var before = CultureInfo.CurrentCulture;
        try
        {
            Gen.Select(AnyOf(Numbers), Gen.Bool, Gen.Int[-99999, 999999], Gen.Int[0, 4], AnyOf(cultures)).Sample((measure, imperial, digits, places, culture) =>
            {
                CultureInfo.CurrentCulture = culture;
                var units = imperial ? UnitChoice.Imperial : UnitChoice.Metric;
                var text = (digits / (decimal)Math.Pow(10, places)).ToString(CultureInfo.InvariantCulture);
                var first = MeasureText.Read(measure, text.Replace('.', ','), units);
                if (!first.IsRead)
                {
                    return;
                }

                var again = MeasureText.Read(measure, first.Typed, imperial ? UnitChoice.Metric : UnitChoice.Imperial);
                Assert.True(double.IsFinite(first.Si!.Value));

                // A number without a unit is the same in both systems only where it has none.
                Assert.Equal((first.Typed, first.Si), (again.Typed, again.Si));
            });
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void What_is_shown_reads_back_to_its_last_digit()
    {
        Gen.Select(AnyOf(Numbers), Gen.Bool, Gen.Double[0, 1]).Sample((measure, imperial, part) =>
        {
            var units = imperial ? UnitChoice.Imperial : UnitChoice.Metric;
            var si = measure.Usual!.LowSi + (part * (measure.Usual.HighSi - measure.Usual.LowSi));

            var shown = ShownMeasure.Text(measure, si, units);
            var read = MeasureText.Read(measure, shown, units);

            Assert.True(read.IsRead, $"{shown}: {read.Problem}");
            Assert.Equal(shown, ShownMeasure.Text(measure, read.Si!.Value, units));
        });
    }

    [Fact]
    public void Nothing_typed_throws_or_gives_a_value_that_is_not_finite()
    {
        var pieces = AnyOf("1", "9", "0", ".", ",", "-", "\u2212", "/", " ", "½", "e", "E", "kg/h", "mm", "in", "\"", "°", "±", "to", "∞", "NaN", "\0", "\uD83D", "🔧", "<", "Ω", "%", "\u202F");
        Gen.Select(AnyOf([.. MeasureCatalogue.All]), pieces.Array[0, 12]).Sample((measure, parts) =>
        {
            var read = MeasureText.Read(measure, string.Concat(parts), UnitChoice.Metric);

            Assert.True(read.Si is null || double.IsFinite(read.Si.Value));
            Assert.Equal(read.IsRead, read.Typed.Length > 0);
        });
    }

    private static Gen<T> AnyOf<T>(params T[] all) => Gen.Int[0, all.Length - 1].Select(i => all[i]);

    private static MeasureDefinition Find(string key) => MeasureCatalogue.Find(key)!;
}
