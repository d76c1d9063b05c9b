using Tickover.Instruments.Logs;
using static Tickover.Instruments.Tests.Logs.WrittenLog;

namespace Tickover.Instruments.Tests.Logs;

/// <summary>Units found, and units that lie.</summary>
public sealed class UnitTests
{
    // Factors by definition: inHg 3 386.389 Pa at 0 °C, mmHg 133.3224 Pa, psi 6 894.757 Pa (NIST SP 811, appendix B.8).
    public static TheoryData<string, string, double, double> Pressures => new()
    {
        { "MAP (kPa)", "kPa abs", 1000, 0 },
        { "manifold [inHg]", "inHg abs", 3386.389, 0 },
        { "vac (inHg)", "inHg vac", -3386.389, 101_325 },
        { "vacuum_mmHg", "mmHg vac", -133.3224, 101_325 },
        { "map mbar", "mbar abs", 100, 0 },
        { "boost (psi)", "psi gauge", 6894.757, 101_325 },
        { "map (psia)", "psi abs", 6894.757, 0 },
        { "map", "kPa abs", 1000, 0 },
    };

    [Theory]
    [MemberData(nameof(Pressures))]
    public void Pressures_are_read_in_any_unit_and_reference(string heading, string unit, double pascals, double from)
    {
        var text = Text($"time,rpm,tps,{(heading.StartsWith("boost", StringComparison.Ordinal) ? "manifold (psi)" : heading)},lambda", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{m.Tps:0.0},{(1000 * m.Map - from) / pascals:0.000},{m.Lambda:0.000}"));

        var reading = Read(text);

        Assert.Equal(unit, reading.Columns[3].Unit?.Name);
        Assert.Equal(1000 * Drive()[333].Map, reading.Good().ManifoldPascals![333], 15f);
    }

    [Fact]
    public void Kilopascals_called_psi_are_found_out_and_said()
    {
        var reading = Read(Text("time,rpm,tps,map (psi),lambda", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{m.Tps:0.0},{m.Map:0.0},{m.Lambda:0.000}")));

        var map = reading.Column("map (psi)");
        Assert.Equal("kPa abs", map.Unit!.Name);
        Assert.Equal(HowSure.Guess, map.Sureness);
        Assert.Contains("cannot be as written (psi)", map.Why);
    }

    [Fact]
    public void A_vacuum_column_that_rises_with_the_throttle_is_absolute()
    {
        var reading = Read(Text("time,rpm,tps,vacuum (kPa),lambda", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{m.Tps:0.0},{m.Map:0.0},{m.Lambda:0.000}")));

        Assert.Equal("kPa abs", reading.Column("vacuum (kPa)").Unit!.Name);
        Assert.Equal(HowSure.Guess, reading.Column("vacuum (kPa)").Sureness);
    }

    [Fact]
    public void An_air_fuel_ratio_is_divided_by_what_was_assumed_and_that_can_be_changed()
    {
        var text = Text("time,rpm,tps,AFR", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{m.Tps:0.0},{14.08 * m.Lambda:0.00}"));

        Assert.Equal("AFR 14.7", Read(text).Column("AFR").Unit!.Name);
        var told = Read(text, new LogReadingSettings { AssumedStoichiometry = 14.08 });
        Assert.Equal("AFR 14.08", told.Column("AFR").Unit!.Name);
        Assert.Equal(Drive()[333].Lambda, told.Good().Lambdas[0].Lambda[333], 0.0005);
    }

    [Fact]
    public void An_afr_column_that_holds_lambda_is_taken_as_lambda()
    {
        var reading = Read(Text("time,rpm,tps,AFR", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{m.Tps:0.0},{m.Lambda:0.000}")));

        Assert.Equal("λ", reading.Column("AFR").Unit!.Name);
    }

    [Fact]
    public void Lambda_goes_before_the_same_sensor_as_a_ratio()
    {
        var reading = Read(Text("time,rpm,tps,AFR,Lambda", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{m.Tps:0.0},{14.7 * m.Lambda:0.00},{m.Lambda:0.000}")));

        Assert.Single(reading.Good().Lambdas);
        Assert.Contains("says the same as Lambda", reading.Column("AFR").Why);
    }

    [Fact]
    public void Fahrenheit_called_celsius_is_found_out()
    {
        var reading = Read(Text("time,rpm,tps,lambda,coolant (C)", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{m.Tps:0.0},{m.Lambda:0.000},{m.Coolant * 1.8 + 32:0.0}")));

        Assert.Equal("°F", reading.Column("coolant (C)").Unit!.Name);
        Assert.Equal(Drive()[333].Coolant + 273.15, reading.Good().CoolantKelvins![333], 0.1f);
    }

    [Theory]
    [InlineData(0.5, "rpm x2")]
    [InlineData(2, "rpm /2")]
    [InlineData(1, "rpm")]
    public void A_pick_up_that_counts_double_or_half_is_seen(double factor, string unit)
    {
        var reading = Read(Text("time,rpm,tps,lambda,speed (km/h)", m => string.Create(C, $"{m.T:0.0},{factor * m.Rpm:0},{m.Tps:0.0},{m.Lambda:0.000},{m.Road:0.0}")));

        Assert.Equal(unit, reading.Column("rpm").Unit!.Name);
        Assert.Equal(Drive()[333].Rpm, reading.Good().SpeedRpm[333], 1.1f);
    }

    [Fact]
    public void A_pick_up_that_was_told_is_left_alone()
    {
        var told = new ColumnChoice { Column = "rpm", Quantity = LogQuantity.EngineSpeed, Unit = LogUnits.Find(LogQuantity.EngineSpeed, "rpm") };
        var reading = Read(Text("time,rpm,tps,lambda", m => string.Create(C, $"{m.T:0.0},{2 * m.Rpm:0},{m.Tps:0.0},{m.Lambda:0.000}")), new LogReadingSettings { Columns = [told] });

        Assert.Equal(2 * Drive()[333].Rpm, reading.Good().SpeedRpm[333], 1.1f);
    }

    [Fact]
    public void Strays_of_the_pick_up_are_taken_out_and_counted()
    {
        var lines = Plain().Split('\n');
        lines[431] = lines[431].Replace("," + Drive()[430].Rpm.ToString("0", C) + ",", ",9870,", StringComparison.Ordinal);

        var reading = Read(string.Join('\n', lines));

        Assert.Equal(1, reading.RepairedFor("strays"));
        Assert.Equal(Drive()[430].Rpm, reading.Good().SpeedRpm[430], 40f);
    }

    [Fact]
    public void A_sensor_that_warms_up_or_sends_codes_is_left_out_while_it_does()
    {
        var text = Text("time,rpm,tps,lambda", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{m.Tps:0.0},{(m.T < 20 ? 1 : m.T is > 50 and < 51 ? 9.99 : m.Lambda):0.000}"));

        var reading = Read(text);

        Assert.Equal(200, reading.RepairedFor("warming up"));
        Assert.Equal(9, reading.RepairedFor("codes"));
        Assert.True(float.IsNaN(reading.Good().Lambdas[0].Lambda[100]));
    }

    [Fact]
    public void The_ends_of_a_sensor_are_found()
    {
        var text = Text("time,rpm,tps,lambda", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{m.Tps:0.0},{(m.T % 40 > 38 ? 1.36 : m.Lambda):0.000}"));

        Assert.Equal(1.358f, Read(text).Good().Lambdas[0].LeanLimit, 0.001f);
        Assert.Equal(float.PositiveInfinity, Read(Plain()).Good().Lambdas[0].LeanLimit);
    }
}
