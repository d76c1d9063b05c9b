using Tickover.Physics.Flow;

namespace Tickover.Physics.Tests.Flow;

public sealed class ChokeAndJetSizingTests
{
    private static readonly SizingCase Four = new()
    {
        SweptVolumeCubicMetres = 2e-3,
        SpeedRpm = 6_000,
        VolumetricEfficiency = 0.8,
        Upstream = new GasState(1e5, 300),
        ThroatSpeedMetresPerSecond = 100,
        AreaCoefficient = 0.85,
        AirFuelRatio = 14,
        FuelDensity = 745,
        LipHeightMetres = 5e-3,
        JetCoefficient = 0.7,
    };

    [Fact]
    public void An_engine_of_two_litres_at_6000_draws_80_litres_a_second_at_four_fifths() =>
        Assert.Equal(0.080, ChokeAndJetSizing.AirVolumeFlow(2e-3, 6_000, 0.8), 12); // 0.8 · 2 · 6000/120

    [Fact]
    public void The_choke_it_names_gives_the_speed_asked_for()
    {
        var size = ChokeAndJetSizing.Size(Four, IdealGas.Air);

        var density = Venturi.ThroatDensity(Four.Upstream, size.ThroatPressurePascals, IdealGas.Air);
        var speed = size.AirFlowKilogramsPerSecond / (density * 0.85 * Circle.Area(size.ChokeDiameterMetres));

        Assert.Equal(100, speed, 9);
    }

    [Fact]
    public void Two_carburettors_need_chokes_of_seven_tenths()
    {
        var one = ChokeAndJetSizing.Size(Four, IdealGas.Air);
        var two = ChokeAndJetSizing.Size(Four with { CarburettorCount = 2 }, IdealGas.Air);

        Assert.Equal(1 / Math.Sqrt(2), two.ChokeDiameterMetres / one.ChokeDiameterMetres, 9);
        Assert.Equal(1 / Math.Sqrt(2), two.JetDiameterMetres / one.JetDiameterMetres, 9);
    }

    [Fact]
    public void A_depression_that_does_not_lift_the_fuel_has_no_jet() =>
        Assert.Equal(double.PositiveInfinity, ChokeAndJetSizing.Size(Four with { ThroatSpeedMetresPerSecond = 2 }, IdealGas.Air).JetDiameterMetres);

    [Fact]
    public void A_nozzle_in_the_throat_needs_a_wider_choke() =>
        Assert.True(ChokeAndJetSizing.Size(Four with { ObstructionRatio = 0.4 }, IdealGas.Air).ChokeDiameterMetres
            > ChokeAndJetSizing.Size(Four, IdealGas.Air).ChokeDiameterMetres);
}
