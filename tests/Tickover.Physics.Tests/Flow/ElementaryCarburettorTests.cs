using CsCheck;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Tests.Flow;

public sealed class ElementaryCarburettorTests
{
    private static readonly ElementaryCarburettor Plain = new()
    {
        ChokeDiameterMetres = 0.032,
        ChokeCoefficient = 0.85,
        JetDiameterMetres = 1.4e-3,
        JetCoefficient = 0.75,
        LipHeightMetres = 6e-3,
        AirDensity = 1.2,
        FuelDensity = 745,
    };

    [Fact]
    public void Below_the_lip_there_is_no_fuel()
    {
        Assert.Equal(43.8, Plain.LipPressurePascals, 1); // 745 · 9.80665 · 0.006
        Assert.Equal(double.PositiveInfinity, Plain.AirFuelRatio(43));
        Assert.Equal(double.PositiveInfinity, Plain.AirFuelRatio(0));
        Assert.Equal(double.PositiveInfinity, Plain.AirFuelRatio(-100));
    }

    [Fact]
    public void Fuel_starts_at_the_speed_whose_head_is_the_lips() =>
        Assert.Equal(Plain.LipPressurePascals, 1.2 * Plain.StartOfFlowSpeed * Plain.StartOfFlowSpeed / 2, 9);

    [Fact]
    public void It_richens_with_air_flow() =>
        Gen.Select(Gen.Double[50, 4e4], Gen.Double[1, 1_000]).Sample((depression, more) =>
            Plain.AirFuelRatio(depression + more, 1e5) < Plain.AirFuelRatio(depression, 1e5));

    [Fact]
    public void A_lower_float_leans_the_start_more_than_full_load()
    {
        var lower = Plain with { LipHeightMetres = 7e-3 };

        Assert.Equal(1.072, lower.AirFuelRatio(100) / Plain.AirFuelRatio(100), 3); // 51.1 of 100 Pa instead of 43.8: sqrt(56.2/48.9)
        Assert.Equal(1.0007, lower.AirFuelRatio(5_000) / Plain.AirFuelRatio(5_000), 4);
    }

    [Fact]
    public void Compressible_air_is_the_incompressible_times_phi() =>
        Assert.Equal(Plain.AirFuelRatio(1e4) * 0.944920, Plain.AirFuelRatio(1e4, 1e5), 4);

    [Fact]
    public void A_clean_filter_changes_nothing_and_a_dirty_one_richens()
    {
        Assert.Equal(14, ElementaryCarburettor.WithOutsideVent(14, 5_000, 0));
        Assert.True(ElementaryCarburettor.WithOutsideVent(14, 5_000, 500) < 14);
    }

    [Fact]
    public void Half_the_density_gives_seven_tenths_of_the_ratio() =>
        Assert.Equal(14 / Math.Sqrt(2), ElementaryCarburettor.AtOtherDensity(14, 1.2, 0.6), 12);
}
