using CsCheck;
using Tickover.Physics.Air;

namespace Tickover.Physics.Tests.Air;

public sealed class StandardAtmosphereTests
{
    [Fact]
    public void Sea_level_is_the_standard_day()
    {
        var air = StandardAtmosphere.At(0);

        Assert.Equal(288.15, air.TemperatureKelvin);
        Assert.Equal(101_325, air.PressurePascals, 6);
        Assert.Equal(1.225, air.DensityKilogramsPerCubicMetre, 5);
    }

    [Fact]
    public void Pressure_and_density_fall_with_altitude() =>
        Gen.Double[-2_000, 10_900].Sample(altitude =>
        {
            var low = StandardAtmosphere.At(altitude);
            var high = StandardAtmosphere.At(altitude + 50);
            return high.PressurePascals < low.PressurePascals
                && high.DensityKilogramsPerCubicMetre < low.DensityKilogramsPerCubicMetre;
        });

    [Fact]
    public void Pressure_falls_as_the_weight_of_the_air_passed() =>
        Gen.Double[-2_000, 10_900].Sample(altitude =>
        {
            // dp/dH = -ρ g, by a central difference over 2 m
            var slope = (StandardAtmosphere.PressurePascals(altitude + 1) - StandardAtmosphere.PressurePascals(altitude - 1)) / 2;
            var weight = StandardAtmosphere.At(altitude).DensityKilogramsPerCubicMetre * AirConstants.StandardGravityMetresPerSecondSquared;
            return Math.Abs(slope + weight) < 1e-6 * weight;
        });

    [Fact]
    public void Geometric_and_geopotential_altitude_convert_back() =>
        Gen.Double[-2_000, 11_000].Sample(altitude =>
            Math.Abs(StandardAtmosphere.GeometricFromGeopotential(StandardAtmosphere.GeopotentialFromGeometric(altitude)) - altitude) < 1e-6);

    [Fact]
    public void Two_kilometres_of_height_are_0_63_m_less_of_geopotential() =>
        Assert.Equal(1999.37, StandardAtmosphere.GeopotentialFromGeometric(2000), 2);

    [Theory]
    [InlineData(-2_000, ValidityKind.Inside)]
    [InlineData(11_000, ValidityKind.Inside)]
    [InlineData(11_001, ValidityKind.Outside)]
    [InlineData(double.NaN, ValidityKind.Outside)]
    public void Validity_ends_at_the_tropopause(double altitude, ValidityKind expected) =>
        Assert.Equal(expected, StandardAtmosphere.ValidityAt(altitude).Kind);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(45_000)]
    public void No_air_is_refused(double altitude) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StandardAtmosphere.At(altitude));
}
