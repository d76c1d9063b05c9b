using CsCheck;
using Tickover.Physics.Exhaust;
using Tickover.Physics.Fuels;

namespace Tickover.Physics.Tests.Exhaust;

public sealed class ExhaustTests
{
    private const double Exact = 1e-12;

    private static readonly ExhaustFuel Petrol = new(1.85, 0);
    private static readonly Gen<ExhaustFuel> AnyFuel = Gen.Select(Gen.Double[1, 3], Gen.Double[0, 0.5], (h, o) => new ExhaustFuel(h, o));
    private static readonly Gen<double> AnyLambda = Gen.Double[0.7, 1.6];

    [Fact]
    public void Stoichiometric_petrol_leaves_15_34_per_cent_of_dioxide() // 1/(1 + 3.77327 · 1.4625)
    {
        var gas = WaterGasEquilibrium.At(1, Petrol);

        Assert.Equal(1 / (1 + 0.7905 / 0.2095 * 1.4625), gas.CarbonDioxide, 12);
        Assert.Equal(0, gas.CarbonMonoxide, 12);
        Assert.Equal(0, gas.Hydrogen, 12);
        Assert.Equal(0, gas.Oxygen, 12);
    }

    [Fact]
    public void Rich_gas_stands_in_the_water_gas_equilibrium() => Gen.Select(AnyFuel, Gen.Double[0.7, 0.999], Gen.Double[1, 5]).Sample((fuel, lambda, constant) =>
    {
        var gas = WaterGasEquilibrium.At(lambda, fuel, constant);
        var waterOverDry = gas.WetWater / (1 - gas.WetWater);

        Assert.Equal(constant, gas.CarbonMonoxide * waterOverDry / (gas.CarbonDioxide * gas.Hydrogen), 6);
    });

    [Fact]
    public void No_atom_is_lost() => Gen.Select(AnyFuel, AnyLambda).Sample((fuel, lambda) =>
    {
        var gas = WaterGasEquilibrium.At(lambda, fuel);
        var water = gas.WetWater / (1 - gas.WetWater);
        var oxygenOfAir = gas.Nitrogen * 0.2095 / 0.7905;

        Assert.Equal(1, gas.CarbonMonoxide + gas.CarbonDioxide + gas.Hydrogen + gas.Oxygen + gas.Nitrogen, Exact);
        Assert.Equal(fuel.HydrogenToCarbon * gas.Carbon, 2 * (gas.Hydrogen + water), Exact);
        Assert.Equal(fuel.OxygenToCarbon * gas.Carbon + 2 * oxygenOfAir, gas.CarbonMonoxide + 2 * gas.CarbonDioxide + 2 * gas.Oxygen + water, Exact);
        Assert.True(gas.Hydrogen >= 0 && gas.CarbonMonoxide >= 0 && water >= 0);
    });

    [Fact]
    public void Formula_gives_back_the_mixture_the_gas_was_made_of() => Gen.Select(AnyFuel, AnyLambda).Sample((fuel, lambda) =>
        Assert.Equal(lambda, LambdaFormula.Of(WaterGasEquilibrium.At(lambda, fuel).ToExhaustSample(), fuel).Value, 9));

    [Fact]
    public void Monoxide_falls_as_the_mixture_leans() => Gen.Select(AnyFuel, Gen.Double[0.7, 0.98]).Sample((fuel, lambda) =>
        Assert.True(WaterGasEquilibrium.At(lambda + 0.01, fuel).CarbonMonoxide < WaterGasEquilibrium.At(lambda, fuel).CarbonMonoxide));

    [Fact]
    public void Unburnt_fuel_with_its_air_leaves_the_formula_where_it_was() => Gen.Select(AnyLambda, Gen.Double[0, 0.2]).Sample((lambda, missed) =>
    {
        // A part of the charges passes unburnt; its fuel counts as hexane, its air as it came. Per mole of carbon.
        var gas = WaterGasEquilibrium.At(lambda, Petrol);
        var dryPerCarbon = 1 / gas.Carbon;
        var air = lambda * 1.4625 / 0.2095;
        var dry = (1 - missed) * dryPerCarbon + missed * (air + 1.0 / 6);
        var sample = new ExhaustSample
        {
            CarbonMonoxide = (1 - missed) * gas.CarbonMonoxide * dryPerCarbon / dry,
            CarbonDioxide = (1 - missed) * gas.CarbonDioxide * dryPerCarbon / dry,
            Oxygen = ((1 - missed) * gas.Oxygen * dryPerCarbon + missed * air * 0.2095) / dry,
            Hydrocarbons = missed / 6 / dry,
        };

        Assert.Equal(lambda, LambdaFormula.Of(sample, Petrol).Value, 9);
    });

    [Theory]
    [InlineData(0.75, 0.05)]
    [InlineData(0.85, 0.10)]
    [InlineData(0.95, 0.30)]
    public void Air_behind_the_engine_shows_as_much_as_came_in(double lambda, double air)
    {
        var gas = WaterGasEquilibrium.At(lambda, Petrol);
        var diluted = new ExhaustSample
        {
            CarbonMonoxide = (1 - air) * gas.CarbonMonoxide,
            CarbonDioxide = (1 - air) * gas.CarbonDioxide,
            Oxygen = (1 - air) * gas.Oxygen + 0.2095 * air,
            Hydrocarbons = 0,
        };

        var balance = ExhaustBalance.Of(diluted, Petrol);

        Assert.Equal(air, balance.AirShare, 9);
        Assert.Equal(lambda, balance.RichLambda, 9);
        Assert.Equal(1, balance.DryTotal, 9); // a leak does not show in the sum
        Assert.Equal(0.2095 * air, balance.OxygenOfAirShare, 9);
        Assert.True(LambdaFormula.Of(diluted, Petrol).Value > lambda + air / 2);
    }

    [Fact]
    public void One_per_cent_of_dioxide_too_much_shows_in_the_sum()
    {
        var gas = WaterGasEquilibrium.At(1, Petrol).ToExhaustSample();

        var off = ExhaustBalance.Of(gas with { CarbonDioxide = gas.CarbonDioxide + 0.01 }, Petrol).DryTotal - 1;

        Assert.Equal(0.01 * (1 + 0.7905 / 0.2095 * (1 + 1.85 / 4)), off, 9); // 6.5 %
    }

    [Fact]
    public void Spindt_agrees_with_the_formula_for_petrol() => AnyLambda.Sample(lambda =>
    {
        var gas = WaterGasEquilibrium.At(lambda, Petrol).ToExhaustSample();

        Assert.Equal(lambda, SpindtRatio.Of(gas, Petrol) / SpindtRatio.Stoichiometric(Petrol), 0.004);
    });

    [Fact]
    public void Spindt_reads_E5_a_little_off_because_it_leaves_out_its_oxygen()
    {
        var fuel = ExhaustFuel.Of(FuelGrade.Ethanol(5).Blend);
        var gas = WaterGasEquilibrium.At(0.9, fuel).ToExhaustSample();

        Assert.Equal(0.9, SpindtRatio.Of(gas, fuel) / SpindtRatio.Stoichiometric(fuel), 0.003);
    }

    [Fact]
    public void Corrected_monoxide_undoes_a_thin_sample()
    {
        var thin = new ExhaustSample { CarbonMonoxide = 0.02, CarbonDioxide = 0.08, Oxygen = 0.07, Hydrocarbons = 0 };
        var full = new ExhaustSample { CarbonMonoxide = 0.03, CarbonDioxide = 0.13, Oxygen = 0.005, Hydrocarbons = 0 };

        Assert.Equal(0.03, thin.CorrectedMonoxide(), 12); // 0.02 · 15/10
        Assert.Equal(0.03, full.CorrectedMonoxide(), 12);
    }

    [Theory]
    [InlineData(0.69, ValidityKind.Extrapolated)]
    [InlineData(0.7, ValidityKind.Inside)]
    [InlineData(1.6, ValidityKind.Inside)]
    [InlineData(2.5, ValidityKind.Extrapolated)]
    public void Composition_says_where_it_is_stated(double lambda, ValidityKind kind) =>
        Assert.Equal(kind, WaterGasEquilibrium.At(lambda, Petrol).Validity.Kind);

    [Theory]
    [InlineData(0.5)]
    [InlineData(11)]
    [InlineData(double.NaN)]
    public void Composition_of_no_exhaust_is_refused(double lambda) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterGasEquilibrium.At(lambda, Petrol));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(-0.01, 0)]
    [InlineData(0.1, double.NaN)]
    [InlineData(0.1, double.PositiveInfinity)]
    public void Sample_without_dioxide_or_with_no_number_is_refused(double dioxide, double oxygen)
    {
        var sample = new ExhaustSample { CarbonMonoxide = 0, CarbonDioxide = dioxide, Oxygen = oxygen, Hydrocarbons = 0 };

        Assert.Throws<ArgumentOutOfRangeException>(() => LambdaFormula.Of(sample, Petrol));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpindtRatio.Of(sample, Petrol));
        Assert.Throws<ArgumentOutOfRangeException>(() => ExhaustBalance.Of(sample, Petrol));
    }

    [Fact]
    public void No_sample_gives_anything_but_numbers() => Gen.Select(Gen.Double[-0.005, 0.2], Gen.Double[0.01, 0.2], Gen.Double[-0.02, 0.215], Gen.Double[-2e-4, 0.06]).Sample((co, co2, o2, hc) =>
    {
        var sample = new ExhaustSample { CarbonMonoxide = co, CarbonDioxide = co2, Oxygen = o2, Hydrocarbons = hc };
        var balance = ExhaustBalance.Of(sample, ExhaustFuel.Regulation);

        Assert.All(
            [LambdaFormula.Of(sample, Petrol).Value, SpindtRatio.Of(sample, Petrol), balance.DryTotal, balance.AirShare, balance.RichLambda, sample.CorrectedMonoxide()],
            value => Assert.True(double.IsFinite(value)));
    });
}
