using CsCheck;
using Tickover.Physics.Flow;
using Tickover.Physics.Fuels;

namespace Tickover.Physics.Tests.Flow;

public sealed class JetFlowTests
{
    private static readonly FuelProperties Petrol = new()
    {
        DensityKilogramsPerCubicMetre = 745,
        ViscosityPascalSeconds = 0.50e-3,
        StoichiometricRatio = 14.572,
    };

    private static readonly Gen<(double Diameter, double Length)> AnyJet = Gen.Select(Gen.Double[0.2e-3, 3e-3], Gen.Double[2, 10]);

    [Fact]
    public void A_main_jet_of_1_40_at_5_kilopascals_by_hand()
    {
        // B = 1.4e-3 · sqrt(2 · 745 · 5000) / 0.5e-3 = 7642.5; Re = 0.7947 · 7642.5 = 6073; m = π/4 · 1.4e-3 · 0.5e-3 · 6073
        var point = JetFlow.At(1.4e-3, 3, 5_000, Petrol);

        Assert.Equal(6073, point.Reynolds, 0);
        Assert.Equal(0.795, point.DischargeCoefficient, 3);
        Assert.Equal(3.339e-3, point.MassFlowKilogramsPerSecond, 6);
        Assert.Equal(Validity.Inside, point.Validity);
    }

    [Fact]
    public void Nothing_flows_without_a_drop_or_without_a_bore()
    {
        Assert.Equal(0, JetFlow.At(1.4e-3, 3, 0, Petrol).MassFlowKilogramsPerSecond);
        Assert.Equal(0, JetFlow.At(0, 3, 5_000, Petrol).MassFlowKilogramsPerSecond);
    }

    [Fact]
    public void Flow_is_antisymmetric_and_rises_with_the_drop() =>
        Gen.Select(AnyJet, Gen.Double[-5e4, 5e4], Gen.Double[1e-3, 100]).Sample((jet, drop, more) =>
            JetFlow.At(jet.Diameter, jet.Length, -drop, Petrol).MassFlowKilogramsPerSecond == -JetFlow.At(jet.Diameter, jet.Length, drop, Petrol).MassFlowKilogramsPerSecond
            && JetFlow.At(jet.Diameter, jet.Length, drop + more, Petrol).MassFlowKilogramsPerSecond > JetFlow.At(jet.Diameter, jet.Length, drop, Petrol).MassFlowKilogramsPerSecond);

    [Fact]
    public void The_drop_of_a_flow_is_the_flow_of_a_drop_turned_round() =>
        Gen.Select(AnyJet, Gen.Double[-3, 5]).Sample((jet, exponent) =>
        {
            var drop = Math.Pow(10, exponent);
            var flow = JetFlow.At(jet.Diameter, jet.Length, drop, Petrol).MassFlowKilogramsPerSecond;
            return Math.Abs(JetFlow.PressureDrop(jet.Diameter, jet.Length, flow, Petrol) / drop - 1) < 1e-10;
        });

    [Fact]
    public void It_is_solved_in_a_handful_of_steps_to_the_last_digits() =>
        Gen.Select(AnyJet, Gen.Double[-3, 5]).Sample((jet, exponent) =>
        {
            var point = JetFlow.At(jet.Diameter, jet.Length, Math.Pow(10, exponent), Petrol);
            return point.Iterations <= 20 && point.Residual < 1e-12;
        });

    [Fact]
    public void Both_laws_meet_in_value_and_slope_at_the_switch() =>
        Gen.Double[2, 10].Sample(length =>
        {
            const double step = 1e-4;
            const double at = JetDischarge.LaminarBelowReynolds;
            double Drop(double reynolds)
            {
                var ideal = reynolds / JetDischarge.Coefficient(reynolds, length);
                return ideal * ideal;
            }

            var before = (Drop(at) - Drop(at - step)) / step;
            var after = (Drop(at + step) - Drop(at)) / step;
            return Math.Abs(before / after - 1) < 1e-5;
        });

    [Fact]
    public void Close_to_rest_flow_is_in_proportion_to_the_drop() =>
        AnyJet.Sample(jet =>
        {
            var one = JetFlow.At(jet.Diameter, jet.Length, 1e-7, Petrol).MassFlowKilogramsPerSecond;
            var two = JetFlow.At(jet.Diameter, jet.Length, 2e-7, Petrol).MassFlowKilogramsPerSecond;
            return Math.Abs(two / one - 2) < 1e-3;
        });

    [Fact]
    public void A_thicker_fuel_of_the_same_weight_passes_less() =>
        Gen.Select(AnyJet, Gen.Double[1, 1e3]).Sample((jet, drop) =>
            JetFlow.At(jet.Diameter, jet.Length, drop, Petrol with { ViscosityPascalSeconds = 0.6e-3 }).MassFlowKilogramsPerSecond
                < JetFlow.At(jet.Diameter, jet.Length, drop, Petrol).MassFlowKilogramsPerSecond);

    [Fact]
    public void Any_finite_drop_and_length_give_a_finite_flow() =>
        Gen.Select(Gen.Double[0, 0.1], Gen.Double[0, JetDischarge.LongestLengthRatio], Gen.Double[-1e12, 1e12]).Sample((diameter, length, drop) =>
        {
            var point = JetFlow.At(diameter, length, drop, Petrol);
            return double.IsFinite(point.MassFlowKilogramsPerSecond) && double.IsFinite(point.DischargeCoefficient) && double.IsFinite(point.Residual);
        });

    [Theory]
    [InlineData(1000, 3, ValidityKind.Inside)]
    [InlineData(50, 3, ValidityKind.Extrapolated)]
    [InlineData(3e4, 3, ValidityKind.Extrapolated)]
    [InlineData(1000, 1.5, ValidityKind.Extrapolated)]
    [InlineData(1000, 20, ValidityKind.Outside)]
    public void Validity_follows_Reynolds_number_and_length(double reynolds, double length, ValidityKind expected) =>
        Assert.Equal(expected, JetFlow.ValidityAt(reynolds, length).Kind);

    [Theory]
    [InlineData(-1e-3, 3, 100)]
    [InlineData(1e-3, -1, 100)]
    [InlineData(1e-3, 3, double.NaN)]
    [InlineData(double.NaN, 3, 100)]
    public void What_is_no_jet_is_refused(double diameter, double length, double drop) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => JetFlow.At(diameter, length, drop, Petrol));
}
