using CsCheck;
using Tickover.Physics.Fuels;

namespace Tickover.Physics.Tests.Fuels;

public sealed class FuelBlendTests
{
    private static readonly Gen<FuelComponent> AnyLiquid = Gen.Int[0, FuelComponents.All.Count - 1].Select(index => FuelComponents.All[index]);

    [Fact]
    public void Pump_petrol_weighs_745_at_20_degrees()
    {
        var petrol = FuelGrade.Pure(FuelComponents.Petrol).At(293.15);

        Assert.Equal(745, petrol.DensityKilogramsPerCubicMetre, 6);
        Assert.Equal(14.572, petrol.StoichiometricRatio, 3);
        Assert.Equal(0.418e-3, petrol.ViscosityPascalSeconds, 6);
    }

    [Fact]
    public void Petrol_expands_by_a_part_in_eight_hundred_a_kelvin()
    {
        var cold = FuelComponents.Petrol.Density.At(293.15);
        var warm = FuelComponents.Petrol.Density.At(303.15);

        Assert.Equal(745 * Math.Exp(-0.0121), warm, 6); // 10 K at 0.00121 a kelvin
        Assert.True(warm < cold);
    }

    [Fact]
    public void Half_and_half_by_volume_weighs_the_mean_at_the_reference()
    {
        var blend = new FuelBlend([new FuelPart(FuelComponents.Toluene, 0.5), new FuelPart(FuelComponents.Heptane, 0.5)]);
        var toluene = FuelComponents.Toluene.Density.At(FuelBlend.ReferenceKelvin);
        var heptane = FuelComponents.Heptane.Density.At(FuelBlend.ReferenceKelvin);

        Assert.Equal((toluene + heptane) / 2, blend.At(FuelBlend.ReferenceKelvin).DensityKilogramsPerCubicMetre, 9);
    }

    [Fact]
    public void Half_and_half_by_volume_is_as_thick_as_the_geometric_mean()
    {
        var blend = new FuelBlend([new FuelPart(FuelComponents.Petrol, 0.5), new FuelPart(FuelComponents.Ethanol, 0.5)]);

        var mean = Math.Sqrt(FuelComponents.Petrol.Viscosity.At(300) * FuelComponents.Ethanol.Viscosity.At(300));

        Assert.Equal(mean, blend.At(300).ViscosityPascalSeconds, 9);
    }

    [Fact]
    public void Methanol_needs_6_47_times_its_mass_of_air() =>
        Assert.Equal(6.472, FuelComponents.Methanol.StoichiometricRatio, 3); // (1 + 4/4 - 1/2)/0.2095 · 28.9647/32.042

    [Fact]
    public void Atoms_of_a_blend_are_those_of_its_parts() // CH1.85 and C2H6O, by the mole of carbon: 0.1*790.3/46.069*2 against 0.9*745/13.876
    {
        var e10 = FuelGrade.Ethanol(10).Blend;
        var carbonOfEthanol = 0.1 * 790.33 / 46.069 * 2;
        var carbonOfPetrol = 0.9 * 745 / 13.8758;

        Assert.Equal((carbonOfEthanol * 3 + carbonOfPetrol * 1.85) / (carbonOfEthanol + carbonOfPetrol), e10.HydrogenToCarbon, 5);
        Assert.Equal(carbonOfEthanol * 0.5 / (carbonOfEthanol + carbonOfPetrol), e10.OxygenToCarbon, 5);
    }

    [Fact]
    public void Stoichiometry_of_a_blend_is_that_of_its_atoms() =>
        Gen.Select(AnyLiquid, AnyLiquid, Gen.Double[0, 1]).Sample((one, other, share) =>
        {
            var blend = new FuelBlend([new FuelPart(one, share), new FuelPart(other, 1 - share)]);
            var fromAtoms = Stoichiometry.AirFuelRatio(1, blend.HydrogenToCarbon, blend.OxygenToCarbon);
            return Math.Abs(fromAtoms - blend.StoichiometricRatio) < 1e-9 * fromAtoms;
        });

    [Fact]
    public void Every_liquid_expands_and_thins_with_warmth() =>
        Gen.Select(AnyLiquid, Gen.Double[280, 335]).Sample((liquid, t) =>
            liquid.Density.At(t + 1) < liquid.Density.At(t) && liquid.Viscosity.At(t + 1) < liquid.Viscosity.At(t));

    [Fact]
    public void A_boiled_off_liquid_still_gives_finite_figures_and_says_they_are_worthless() =>
        Gen.Select(AnyLiquid, Gen.Double[600, 1_000]).Sample((liquid, t) =>
        {
            var fuel = FuelGrade.Pure(liquid);
            var properties = fuel.At(t);
            return double.IsFinite(properties.DensityKilogramsPerCubicMetre) && double.IsFinite(properties.ViscosityPascalSeconds)
                && fuel.Blend.ValidityAt(t).Kind == ValidityKind.Outside;
        });

    [Fact]
    public void A_part_that_is_not_there_does_not_narrow_the_range() =>
        Assert.Equal(ValidityKind.Inside, FuelGrade.Ethanol(100).Blend.ValidityAt(345).Kind);

    [Fact]
    public void Parts_that_do_not_fill_the_tank_are_refused() =>
        Assert.Throws<ArgumentException>(() => new FuelBlend([new FuelPart(FuelComponents.Petrol, 0.9)]));

    [Fact]
    public void An_empty_blend_is_refused() => Assert.Throws<ArgumentException>(() => new FuelBlend([]));

    [Theory]
    [InlineData(1.2)]
    [InlineData(double.NaN)]
    public void A_petrol_of_impossible_hydrogen_is_refused(double ratio) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FuelComponents.PetrolOf(ratio));
}
