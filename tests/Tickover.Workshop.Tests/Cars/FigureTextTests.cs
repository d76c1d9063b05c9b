using CsCheck;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tests.Cars;

public class FigureTextTests
{
    /// <summary>UnitsNet's factor for rpm carries 11 digits.</summary>
    private const double UnitRounding = 1e-11;

    /// <summary>Half of the last digit shown, in SI; one hundredth of a percent more for rounding of the conversion.</summary>
    private static readonly Dictionary<Measure, double> HalfDigit = new()
    {
        [Measure.Length] = 0.005e-3,
        [Measure.JetBore] = 0.005e-5,
        [Measure.Volume] = 0.05e-6,
        [Measure.Angle] = 0.05 * Math.PI / 180,
        [Measure.Speed] = 0.5 * Math.PI / 30,
        [Measure.Pressure] = 5,
        [Measure.Temperature] = 0.05,
        [Measure.TemperatureDifference] = 0.05,
        [Measure.Altitude] = 0.5,
        [Measure.Turns] = 0.005,
        [Measure.Ratio] = 0.0005,
        [Measure.Percent] = 0.0005,
        [Measure.Count] = 0.5,
        [Measure.Area] = 0.005e-6,
        [Measure.Heat] = 0.005e6,
    };

    [Theory]
    [InlineData(Measure.Speed, "1e308 rpm")]
    [InlineData(Measure.Temperature, "-1e308 °C")]
    [InlineData(Measure.Length, "1e307 m")]
    [InlineData(Measure.JetBore, "1e308")]
    public void A_number_beyond_all_measure_is_a_complaint_and_no_exception(Measure measure, string text)
    {
        Assert.NotNull(FigureText.Explain(measure, text, out var si));
        Assert.Equal(0, si);
    }

    [Theory]
    [InlineData(Measure.Length, "32 mm", 0.032)]
    [InlineData(Measure.Length, "3,5mm", 0.0035)]
    [InlineData(Measure.Length, " 1.25 in ", 0.03175)]
    [InlineData(Measure.Length, "1 1/4 in", 0.03175)]
    [InlineData(Measure.Length, "5/8\"", 0.015875)]
    [InlineData(Measure.Length, "32 MM", 0.032)]
    [InlineData(Measure.JetBore, "135", 0.00135)]
    [InlineData(Measure.JetBore, "0.50 mm", 0.0005)]
    [InlineData(Measure.JetBore, "1,35 mm", 0.00135)]
    [InlineData(Measure.Volume, "450 cc", 450e-6)]
    [InlineData(Measure.Angle, "8°", 8 * Math.PI / 180)]
    [InlineData(Measure.Angle, "-8 deg", -8 * Math.PI / 180)]
    [InlineData(Measure.Angle, "−8°", -8 * Math.PI / 180)]
    [InlineData(Measure.Speed, "6000 rpm", 200 * Math.PI)]
    [InlineData(Measure.Pressure, "1013,25 hPa", 101325)]
    [InlineData(Measure.Pressure, "150 mbar", 15000)]
    [InlineData(Measure.Temperature, "59 °F", 288.15)]
    [InlineData(Measure.Temperature, "15 C", 288.15)]
    [InlineData(Measure.TemperatureDifference, "10 K", 10)]
    [InlineData(Measure.Altitude, "1000 ft", 304.8)]
    [InlineData(Measure.Turns, "2,5 turns", 2.5)]
    [InlineData(Measure.Ratio, "9.3", 9.3)]
    [InlineData(Measure.Percent, "70 %", 0.7)]
    [InlineData(Measure.Count, "2", 2)]
    [InlineData(Measure.Area, "2 mm2", 2e-6)]
    [InlineData(Measure.Heat, "2.75 MJ/kg", 2.75e6)]
    public void A_quantity_is_read_as_a_workshop_writes_it(Measure measure, string text, double si)
    {
        Assert.True(FigureText.TryParse(measure, text, out var read));
        Assert.Equal(si, read, UnitRounding * Math.Max(1, Math.Abs(si)));
    }

    [Theory]
    [InlineData(Measure.Length, "32", "32 has no unit", "Write \"32 mm\" if that is what is meant.")]
    [InlineData(Measure.Length, "32 furlongs", "\"furlongs\" is not a unit used here", "Write it as \"32 mm\" or \"1.25 in\".")]
    [InlineData(Measure.Length, "wide", "\"wide\" is not a number with a unit", "Write it as \"32 mm\" or \"1.25 in\".")]
    [InlineData(Measure.Length, "", "\"\" is not a number with a unit", "Write it as \"32 mm\" or \"1.25 in\".")]
    [InlineData(Measure.Length, "1.234,5 mm", "\"1.234,5 mm\" is not a number with a unit", "Write it as \"32 mm\" or \"1.25 in\".")]
    [InlineData(Measure.Length, "1/0 in", "\"1/0 in\" is not a number with a unit", "Write it as \"32 mm\" or \"1.25 in\".")]
    [InlineData(Measure.Length, "NaN mm", "\"NaN mm\" is not a number with a unit", "Write it as \"32 mm\" or \"1.25 in\".")]
    [InlineData(Measure.Length, "Infinity mm", "\"Infinity mm\" is not a number with a unit", "Write it as \"32 mm\" or \"1.25 in\".")]
    [InlineData(Measure.Length, "1e999 mm", "\"1e999 mm\" is not a number with a unit", "Write it as \"32 mm\" or \"1.25 in\".")]
    [InlineData(Measure.Percent, "0.7", "0.7 has no unit", "Write \"0.7 %\" if that is what is meant.")]
    [InlineData(Measure.Temperature, "20", "20 has no unit", "Write \"20 °C\" if that is what is meant.")]
    [InlineData(Measure.Count, "1.5", "1.5 is not a whole number", "Write a whole number.")]
    [InlineData(Measure.Ratio, "9 mm", "\"mm\" is not a unit used here", "Write it as \"0.8\".")]
    public void What_is_not_read_is_explained(Measure measure, string text, string problem, string whatToDo)
    {
        var explained = FigureText.Explain(measure, text, out var si);

        Assert.Equal(problem, explained?.Problem);
        Assert.Equal(whatToDo, explained?.WhatToDo);
        Assert.Equal(0, si);
    }

    [Theory]
    [InlineData(Measure.Length, 0.032, "32 mm")]
    [InlineData(Measure.Length, 0.03175, "31.75 mm")]
    [InlineData(Measure.Length, 0.00075, "0.75 mm")]
    [InlineData(Measure.JetBore, 0.00135, "135")]
    [InlineData(Measure.JetBore, 0.001325, "132.5")]
    [InlineData(Measure.Angle, 8 * Math.PI / 180, "8°")]
    [InlineData(Measure.Speed, 200 * Math.PI, "6000 rpm")]
    [InlineData(Measure.Pressure, 250, "250 Pa")]
    [InlineData(Measure.Pressure, 101325, "1013.3 hPa")]
    [InlineData(Measure.Temperature, 288.15, "15 °C")]
    [InlineData(Measure.Percent, 0.17, "17 %")]
    [InlineData(Measure.Turns, 1.5, "1.5 turns")]
    [InlineData(Measure.Length, -1e-9, "0 mm")]
    public void A_figure_is_shown_in_the_trades_digits(Measure measure, double si, string shown) =>
        Assert.Equal(shown, FigureText.Show(measure, si));

    [Fact]
    public void What_is_shown_is_read_back_to_within_its_last_digit()
    {
        var entries = FigureCatalogue.Engine.Concat(FigureCatalogue.Barrel).Concat(FigureCatalogue.Ambient).ToArray();
        Gen.OneOf(entries).SelectMany(e => Gen.Double[e.Definition.MinimumSi, e.Definition.MaximumSi], (e, si) => (e, si)).Sample(
            pair =>
            {
                var (entry, si) = pair;
                var measure = entry.Definition.Measure;
                var shown = FigureText.Show(measure, si);
                var tolerance = HalfDigit[measure] + (1e-4 * HalfDigit[measure]);
                return FigureText.TryParse(measure, shown, out var back) && Math.Abs(back - si) <= tolerance;
            },
            iter: 20_000);
    }

    [Fact]
    public void A_comma_and_a_point_read_alike()
    {
        Gen.Int[0, 9999].Select(Gen.Int[0, 99], Gen.Enum<Measure>()).Sample(
            typed =>
            {
                var (whole, part, measure) = typed;
                var unit = FigureText.Unit(measure, 0);
                var withPoint = FigureText.TryParse(measure, $"{whole}.{part:00} {unit}", out var point);
                var withComma = FigureText.TryParse(measure, $"{whole},{part:00} {unit}", out var comma);
                return withPoint == withComma && point == comma && (withPoint || measure == Measure.Count);
            });
    }

    [Fact]
    public void No_text_makes_it_throw_or_give_a_number_that_is_none()
    {
        var characters = Gen.OneOf<char>(Gen.Char["0123456789.,-+eE/ mMin°%\"xNaPhrk∞²³٣"], Gen.Char);
        Gen.Enum<Measure>().Select(characters.Array[0, 50]).Sample(
            (measure, text) =>
            {
                var problem = FigureText.Explain(measure, new string(text), out var si);
                return double.IsFinite(si) && (problem is null || si == 0);
            },
            iter: 20_000);
    }
}
