using CsCheck;
using Tickover.Physics.Fuels;
using Tickover.Workshop.Exhaust;

namespace Tickover.Workshop.Tests.Exhaust;

public sealed class GasAccountTests
{
    private static readonly FuelGrade E5 = FuelGrade.Ethanol(5);

    // CO, HC, CO₂, O₂ of open inspection records and of the worked rows: ordinary engines, nothing to name.
    [Theory]
    [InlineData("7.72", "481", "10.2", ".59", "0.804")]
    [InlineData("3.372", "95", "12.71", ".81", "0.936")]
    [InlineData("5.121", "159", "11.93", ".04", "0.856")]
    [InlineData("2.52", "345", "13.0", ".63", "0.940")]
    [InlineData("0.5", "150", "14.7", "0.7", "1.012")]
    [InlineData("3.5", "300", "12.6", "0.5", "0.913")]
    [InlineData("6.0", "400", "11.0", "0.3", "0.836")]
    [InlineData("1.2", "110", "14.1", "-0.02", "")] // O₂ a little below zero is the cell's zero
    public void Ordinary_reading_is_good(string co, string hc, string co2, string o2, string lambda)
    {
        var account = Judged(co, hc, co2, o2, lambda);

        Assert.Empty(account.Faults);
        Assert.Equal(GasStanding.Good, account.Standing);
    }

    // By hand: the gas of λ 0.90, CO 3.69 and CO₂ 12.88, with a tenth of air: nine tenths of each, O₂ 2.1 and 0.5 of the engine's own.
    [Theory]
    [InlineData("3.32", "180", "11.59", "2.55", GasFaultKind.DilutedSample, GasStanding.Spoilt)]
    [InlineData("0.30", "90", "9.9", "6.9", GasFaultKind.DilutedSample, GasStanding.Spoilt)] // λ 1.4: no engine runs so
    [InlineData("1.90", "2840", "11.4", "3.90", GasFaultKind.Misfire, GasStanding.Spoilt)]
    [InlineData("0.20", "3500", "11.0", "6.0", GasFaultKind.Misfire, GasStanding.Spoilt)]
    [InlineData("0.42", "96", "13.2", "2.1", GasFaultKind.LeanOrLeak, GasStanding.Doubtful)]
    [InlineData("0.10", "100", "13.5", "2.5", GasFaultKind.LeanOrLeak, GasStanding.Doubtful)]
    [InlineData("2.50", "300", "13.0", "-0.4", GasFaultKind.NotZeroed, GasStanding.Spoilt)]
    [InlineData("-0.3", "300", "14.9", "0.6", GasFaultKind.NotZeroed, GasStanding.Spoilt)]
    [InlineData("0.3", "-40", "14.9", "0.6", GasFaultKind.NotZeroed, GasStanding.Spoilt)]
    [InlineData("2.50", "300", "17.5", "0.6", GasFaultKind.ImpossibleSum, GasStanding.Spoilt)]
    [InlineData("2.50", "300", "8.0", "0.6", GasFaultKind.ImpossibleSum, GasStanding.Spoilt)]
    [InlineData("0.30", "100", "14.9", "6.0", GasFaultKind.ImpossibleSum, GasStanding.Spoilt)]
    [InlineData("7.5", "1400", "10.3", "0.5", GasFaultKind.HighHydrocarbons, GasStanding.Doubtful)]
    [InlineData("2.52", "345", "130", "0.63", GasFaultKind.DioxideInTenths, GasStanding.Good)]
    public void Fault_is_named_first(string co, string hc, string co2, string o2, GasFaultKind kind, GasStanding standing)
    {
        var account = Judged(co, hc, co2, o2);

        Assert.Equal(kind, account.Faults[0].Kind);
        Assert.Equal(standing, account.Standing);
    }

    [Theory]
    [InlineData("0.940", false)]
    [InlineData("0.943", false)]
    [InlineData("0.9", false)] // one decimal says no more than 0.85 to 0.95
    [InlineData("0.96", true)]
    [InlineData("1.0", false)]
    [InlineData("1.1", true)]
    public void Shown_lambda_is_compared_as_far_as_its_digits_go(string shown, bool disagrees)
    {
        var account = Judged("2.52", "345", "13.0", "0.63", shown);

        Assert.Equal(disagrees, account.Faults.Any(fault => fault.Kind == GasFaultKind.LambdaDisagrees));
    }

    [Fact]
    public void Diluted_sample_says_how_much_air_and_what_it_was_before()
    {
        var account = Judged("3.32", "180", "11.59", "2.55");

        Assert.Equal(0.90, account.UndilutedLambda!.Value, 0.005);
        Assert.InRange(account.AirPercent!.Value, 8, 11);
        Assert.Equal(1.01, account.Lambda, 0.005);
        Assert.Contains("read each bank", account.Faults[0].WhatToDo, StringComparison.Ordinal); // a lean barrel beside rich ones looks the same
    }

    [Fact]
    public void Too_little_monoxide_says_nothing_of_the_air()
    {
        var account = Judged("0.42", "96", "13.2", "2.1");

        Assert.Null(account.UndilutedLambda);
        Assert.Null(account.AirPercent);
    }

    [Fact]
    public void Fuels_own_constants_are_a_choice()
    {
        var reading = Read("0.5", "150", "14.7", "0.7");

        var usual = GasAccount.Of(reading, E5);
        var own = GasAccount.Of(reading, E5, FuelConstants.Fuel);

        Assert.Equal(1.01190, usual.Lambda, 5);
        Assert.Equal(usual.LambdaOfFuel, own.Lambda, 12);
        Assert.Equal(1.01112, own.Lambda, 4); // CH1.89 O0.016 of the regulation for E5, ours CH1.887 O0.0162
        Assert.NotEqual(usual.Lambda, own.Lambda, 4);
    }

    [Theory]
    [InlineData("2,52", "345 ppm", "13,0 %", "0,63 % vol")]
    [InlineData(" 2.52 ", "345", "13.0%", ".63")]
    [InlineData("+2.52", "345", "130", "0.63")]
    public void Numbers_are_read_as_people_write_them(string co, string hc, string co2, string o2)
    {
        var reading = Read(co, hc, co2, o2);

        Assert.Equal((2.52, 345, 13, 0.63), (reading.CarbonMonoxidePercent, reading.HydrocarbonsPpm, reading.CarbonDioxidePercent, reading.OxygenPercent));
    }

    [Fact]
    public void Everything_wrong_is_said_at_once()
    {
        var outcome = new GasEntry { CarbonMonoxide = "x", CarbonDioxide = "400", Oxygen = "1e999", Lambda = "14.7" }.Read();

        Assert.False(outcome.Good);
        Assert.Equal(5, outcome.Complaints.Count);
    }

    [Fact]
    public void Whatever_is_typed_is_read_or_refused_and_judged_in_numbers() => Gen.Select(Gen.String, Gen.Double[-2, 25], Gen.Double[-300, 70_000], Gen.Double[0, 210]).Sample((text, percent, ppm, dioxide) =>
    {
        new GasEntry { CarbonMonoxide = text, Hydrocarbons = text, CarbonDioxide = text, Oxygen = text, Lambda = text, Speed = text, Oil = text }.Read();
        var outcome = new GasEntry { CarbonMonoxide = Text(percent), Hydrocarbons = Text(ppm), CarbonDioxide = Text(dioxide), Oxygen = Text(25 - percent) }.Read();
        if (outcome.Good)
        {
            var account = GasAccount.Of(outcome.Reading, E5);

            Assert.All([account.Lambda, account.LambdaBand, account.SpindtLambda, account.DryTotalPercent], value => Assert.True(double.IsFinite(value)));
        }
    });

    private static string Text(double value) => value.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture);

    private static GasReading Read(string co, string hc, string co2, string o2, string? lambda = null)
    {
        var outcome = new GasEntry { CarbonMonoxide = co, Hydrocarbons = hc, CarbonDioxide = co2, Oxygen = o2, Lambda = lambda }.Read();
        Assert.Empty(outcome.Complaints);
        return outcome.Reading!;
    }

    private static GasAccount Judged(string co, string hc, string co2, string o2, string? lambda = null) => GasAccount.Of(Read(co, hc, co2, o2, lambda), E5);
}
