using CsCheck;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Tests.Flow;

public sealed class IsentropicFlowTests
{
    private static readonly Gen<double> AnyGamma = Gen.Double[1.1, 1.67];

    [Fact]
    public void Psi_at_nine_tenths_by_hand() =>
        Assert.Equal(0.422581, IsentropicFlow.Psi(0.9, 1.4), 6); // sqrt(7 (0.9^1.428571 - 0.9^1.714286)) = sqrt(7 (0.860271 - 0.834761))

    [Theory]
    [InlineData(1.0)]
    [InlineData(1.5)]
    [InlineData(double.MaxValue)]
    public void Nothing_flows_from_equal_or_higher_pressure_ahead(double ratio)
    {
        Assert.Equal(0, IsentropicFlow.Psi(ratio, 1.4));
        Assert.Equal(1, IsentropicFlow.Phi(ratio, 1.4));
    }

    [Fact]
    public void Flow_does_not_rise_once_the_throat_is_sonic() =>
        Gen.Select(AnyGamma, Gen.Double[-10, 1]).Sample((gamma, part) =>
            IsentropicFlow.Psi(part * IsentropicFlow.CriticalPressureRatio(gamma), gamma) == IsentropicFlow.ChokedPsi(gamma));

    [Fact]
    public void Flow_falls_as_the_pressure_ahead_rises() =>
        Gen.Select(AnyGamma, Gen.Double[0, 1], Gen.Double[0, 1]).Sample((gamma, one, other) =>
            IsentropicFlow.Psi(Math.Min(one, other), gamma) >= IsentropicFlow.Psi(Math.Max(one, other), gamma));

    [Fact]
    public void Both_branches_meet_in_value_and_slope_at_the_critical_ratio() =>
        AnyGamma.Sample(gamma =>
        {
            const double step = 1e-6;
            var critical = IsentropicFlow.CriticalPressureRatio(gamma);
            var above = IsentropicFlow.Psi(critical + step, gamma);
            var choked = IsentropicFlow.ChokedPsi(gamma);
            return Math.Abs(above - choked) < 1e-10 && Math.Abs((above - choked) / step) < 1e-4;
        });

    [Fact]
    public void Phi_keeps_its_digits_near_rest() =>
        Gen.Double[-12, -4].Sample(exponent =>
        {
            // Φ = 1 - 3/(4γ) x + O(x²)
            var drop = 1 - (1 - Math.Pow(10, exponent)); // what is left of the drop in the ratio
            return Math.Abs(IsentropicFlow.Phi(1 - drop, 1.4) - (1 - 0.75 / 1.4 * drop)) < 2 * drop * drop + 1e-14;
        });

    [Fact]
    public void Psi_and_phi_say_the_same() =>
        Gen.Select(AnyGamma, Gen.Double[0.01, 0.999]).Sample((gamma, ratio) =>
            Math.Abs(IsentropicFlow.Psi(ratio, gamma) - Math.Sqrt(2 * (1 - ratio)) * IsentropicFlow.Phi(ratio, gamma)) < 1e-12);

    [Fact]
    public void Ratios_at_a_Mach_number_obey_the_gas_law() =>
        Gen.Select(AnyGamma, Gen.Double[0, 5]).Sample((gamma, mach) =>
            Math.Abs(IsentropicFlow.PressureRatio(mach, gamma)
                - IsentropicFlow.DensityRatio(mach, gamma) * IsentropicFlow.TemperatureRatio(mach, gamma)) < 1e-12);

    [Fact]
    public void The_area_ratio_is_the_choked_over_the_local_flow() =>
        Gen.Select(AnyGamma, Gen.Double[0.05, 1]).Sample((gamma, mach) =>
        {
            var here = IsentropicFlow.Psi(IsentropicFlow.PressureRatio(mach, gamma), gamma);
            return Math.Abs(IsentropicFlow.ChokedPsi(gamma) / here - IsentropicFlow.AreaRatio(mach, gamma)) < 1e-9 * IsentropicFlow.AreaRatio(mach, gamma);
        });

    [Fact]
    public void A_gas_at_rest_is_its_own_total_state() =>
        Assert.Equal(new GasState(9e4, 300), IsentropicFlow.Total(new GasState(9e4, 300), 0, IdealGas.Air));
}
