using CsCheck;
using Tickover.Physics.Air;

namespace Tickover.Physics.Tests.Air;

public sealed class AirViscosityTests
{
    [Fact]
    public void At_15_degrees_it_is_17_89_micropascal_seconds() =>
        Assert.Equal(17.894e-6, AirViscosity.PascalSeconds(288.15), 9);

    [Fact]
    public void Warm_air_is_more_viscous() =>
        Gen.Double[100, 1_500].Sample(t => AirViscosity.PascalSeconds(t + 1) > AirViscosity.PascalSeconds(t));

    [Fact]
    public void A_temperature_of_zero_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => AirViscosity.PascalSeconds(0));

    [Fact]
    public void Validity_ends_at_1500_kelvin() =>
        Assert.Equal(ValidityKind.Outside, AirViscosity.ValidityAt(1_600).Kind);
}
