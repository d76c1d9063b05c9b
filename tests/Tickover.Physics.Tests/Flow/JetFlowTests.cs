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
        // B = 1.4e-3 · sqrt(2 · 745 · 5000)/0.5e-3 = 7642.5; 1/Cd = 1/0.8015 + 155/7642.5 - 0.015/(1 + 7.5 · 0.0593²); m = π/4 · 1.4e-3 · 0.5e-3 · Cd B
        var point = JetFlow.At(1.4e-3, 3, 5_000, Petrol);

        Assert.Equal(7642.5, point.IdealReynolds, 1);
        Assert.Equal(0.7979, point.DischargeCoefficient, 4);
        Assert.Equal(3.3524e-3, point.MassFlowKilogramsPerSecond, 7);
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
    public void Close_to_rest_flow_is_in_proportion_to_the_drop() =>
        AnyJet.Sample(jet =>
        {
            var one = JetFlow.At(jet.Diameter, jet.Length, 1e-7, Petrol).MassFlowKilogramsPerSecond;
            var two = JetFlow.At(jet.Diameter, jet.Length, 2e-7, Petrol).MassFlowKilogramsPerSecond;
            return Math.Abs(two / one - 2) < 1e-3;
        });

    [Fact]
    public void Creeping_flow_is_some_half_more_than_laminar_theory_gives() =>
        AnyJet.Sample(jet =>
        {
            // fully developed 32 µ v L/D² and the entry and exit of a hole 6 π µ v/D (Sampson), against the formula's own limit
            const double drop = 1e-6;
            var theory = drop * jet.Diameter / (Petrol.ViscosityPascalSeconds * (32 * jet.Length + 6 * Math.PI))
                * Petrol.DensityKilogramsPerCubicMetre * Circle.Area(jet.Diameter);
            var ratio = JetFlow.At(jet.Diameter, jet.Length, drop, Petrol).MassFlowKilogramsPerSecond / theory;
            return ratio is > 1.4 and < 1.55; // (64 L/D + 12 π)/(20 + 45 L/D)
        });

    [Fact]
    public void Slope_is_continuous_through_rest()
    {
        const double step = 1e-9;
        var ahead = JetFlow.At(1.4e-3, 3, step, Petrol).MassFlowKilogramsPerSecond / step;
        var farther = (JetFlow.At(1.4e-3, 3, 2 * step, Petrol).MassFlowKilogramsPerSecond - JetFlow.At(1.4e-3, 3, step, Petrol).MassFlowKilogramsPerSecond) / step;

        Assert.Equal(ahead, farther, 1e-4 * ahead);
    }

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
            return double.IsFinite(point.MassFlowKilogramsPerSecond) && double.IsFinite(point.DischargeCoefficient);
        });

    [Theory]
    [InlineData(1000, 3, ValidityKind.Inside)]
    [InlineData(5, 3, ValidityKind.Extrapolated)]
    [InlineData(3e4, 3, ValidityKind.Extrapolated)]
    [InlineData(1000, 1.6, ValidityKind.Extrapolated)]
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
