using CsCheck;
using Tickover.Physics.Air;

namespace Tickover.Physics.Tests.Air;

public sealed class MoistAirTests
{
    private static readonly Gen<(double P, double T, double H)> Weather = Gen.Select(
        Gen.Double[60_000, 110_000], Gen.Double[253.15, 318.15], Gen.Double[0, 1]);

    [Fact]
    public void A_room_at_20_degrees_and_half_saturated_holds_air_of_1_1993()
    {
        var air = MoistAir.At(101_325, 293.15, 0.5);

        Assert.Equal(1.199314, air.DensityKilogramsPerCubicMetre, 6);
        Assert.Equal(2339.163, MoistAir.SaturationPressurePascals(293.15), 3);
        Assert.Equal(1.0040256, MoistAir.EnhancementFactor(101_325, 293.15), 7);
        Assert.Equal(0.01158934, MoistAir.VapourMoleFraction(101_325, 293.15, 0.5), 8);
        Assert.Equal(0.99961477, MoistAir.Compressibility(101_325, 293.15, 0.01158934), 8);
    }

    [Fact]
    public void Dry_air_is_all_dry_air_and_has_its_gas_constant()
    {
        var air = MoistAir.At(101_325, 288.15, 0);

        Assert.Equal(1, air.DryAirFraction);

        // 8.314472 / 0.02896546 = 287.05; Z = 0.9996 takes 0.1 off
        Assert.Equal(286.9, air.GasConstantJoulesPerKilogramKelvin, 1);
    }

    [Fact]
    public void Half_saturated_air_at_20_degrees_carries_7_grams_of_water_a_kilogram() =>
        Assert.Equal(1 - 0.00724, MoistAir.At(101_325, 293.15, 0.5).DryAirFraction, 5); // 0.011589*18.015/(0.011589*18.015+0.988411*28.965)

    [Fact]
    public void Damp_air_is_lighter() =>
        Weather.Sample(w => MoistAir.At(w.P, w.T, 1).DensityKilogramsPerCubicMetre < MoistAir.At(w.P, w.T, 0).DensityKilogramsPerCubicMetre);

    [Fact]
    public void Air_gets_lighter_with_warmth_and_heavier_with_pressure() =>
        Weather.Sample(w =>
        {
            var here = MoistAir.At(w.P, w.T, w.H).DensityKilogramsPerCubicMetre;
            return MoistAir.At(w.P, w.T + 1, w.H).DensityKilogramsPerCubicMetre < here
                && MoistAir.At(w.P + 100, w.T, w.H).DensityKilogramsPerCubicMetre > here;
        });

    [Theory]
    [InlineData(101_325, 293.15, 0.5, ValidityKind.Inside)]
    [InlineData(101_325, 310, 0.5, ValidityKind.Extrapolated)]
    [InlineData(50_000, 293.15, 0.5, ValidityKind.Extrapolated)]
    [InlineData(101_325, 400, 0.5, ValidityKind.Outside)]
    [InlineData(101_325, 293.15, 1.2, ValidityKind.Outside)]
    [InlineData(double.NaN, 293.15, 0.5, ValidityKind.Outside)]
    public void Validity_names_how_far_out_a_state_is(double p, double t, double h, ValidityKind expected) =>
        Assert.Equal(expected, MoistAir.ValidityAt(p, t, h).Kind);

    [Theory]
    [InlineData(double.NaN, 293.15, 0.5)]
    [InlineData(0, 293.15, 0.5)]
    [InlineData(101_325, double.PositiveInfinity, 0.5)]
    [InlineData(101_325, 293.15, -0.1)]
    [InlineData(101_325, 293.15, 1.1)]
    public void A_breach_of_contract_is_refused_with_name_and_range(double p, double t, double h)
    {
        var fault = Assert.Throws<ArgumentOutOfRangeException>(() => MoistAir.At(p, t, h));

        Assert.Contains("must be", fault.Message, StringComparison.Ordinal);
    }
}
