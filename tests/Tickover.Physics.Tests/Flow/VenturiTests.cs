using CsCheck;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Tests.Flow;

public sealed class VenturiTests
{
    private static readonly GasState Room = new(101_325, 293.15);

    [Fact]
    public void Throat_pressure_at_100_metres_a_second_by_hand() =>
        // T falls by 100²/(2 · 1004.685) = 4.9767 K; (1 - 4.9767/293.15)^3.5 = 0.941832
        Assert.Equal(95_431, Venturi.ThroatPressure(Room, 100, 1, IdealGas.Air), 0);

    [Fact]
    public void Speed_and_pressure_turn_into_each_other() =>
        Gen.Select(Gen.Double[1, 300], Gen.Double[0.6, 1]).Sample((speed, cv) =>
            Math.Abs(Venturi.ThroatSpeed(Room, Venturi.ThroatPressure(Room, speed, cv, IdealGas.Air), cv, IdealGas.Air) / speed - 1) < 1e-9);

    [Fact]
    public void A_speed_beyond_all_expansion_leaves_no_pressure() =>
        Assert.Equal(0, Venturi.ThroatPressure(Room, 1e4, 1, IdealGas.Air));

    [Fact]
    public void Flow_from_pressure_and_pressure_from_flow_turn_into_each_other() =>
        Gen.Double[0.0001, 0.471].Sample(drop =>
        {
            var throat = Room.PressurePascals * (1 - drop);
            var flow = new CompressibleOrifice { EffectiveAreaSquareMetres = 6e-4 }.MassFlow(Room, new GasState(throat, 300));
            var point = Venturi.PressureFromFlow(Room, flow, 6e-4, IdealGas.Air);
            return !point.IsChoked && Math.Abs(point.ThroatPressurePascals - throat) < 1e-4;
        });

    [Fact]
    public void Without_flow_the_throat_is_at_rest() =>
        Assert.Equal(new VenturiPoint(101_325, false, false, 1), Venturi.PressureFromFlow(Room, 0, 6e-4, IdealGas.Air));

    [Fact]
    public void More_than_the_throat_can_pass_is_said_to_be_so()
    {
        var most = 6e-4 * IsentropicFlow.ChokedMassFlux(Room, IdealGas.Air);

        var point = Venturi.PressureFromFlow(Room, 1.01 * most, 6e-4, IdealGas.Air);

        Assert.True(point.IsChoked);
        Assert.True(point.IsTooMuch);
        Assert.Equal(0.528282 * 101_325, point.ThroatPressurePascals, 0);
    }

    [Fact]
    public void Any_flow_gives_a_finite_pressure_between_sonic_and_rest() =>
        Gen.Double[0, 10].Sample(flow =>
        {
            var point = Venturi.PressureFromFlow(Room, flow, 6e-4, IdealGas.Air);
            return point.ThroatPressurePascals >= 0.5282 * Room.PressurePascals && point.ThroatPressurePascals <= Room.PressurePascals && point.Iterations <= 60;
        });

    [Fact]
    public void Throat_density_area_and_speed_pass_the_flow()
    {
        var pressure = Venturi.ThroatPressure(Room, 100, 1, IdealGas.Air);
        var density = Venturi.ThroatDensity(Room, pressure, IdealGas.Air);

        var area = Venturi.ThroatArea(0.05, density, 100);

        Assert.Equal(0.05, new CompressibleOrifice { EffectiveAreaSquareMetres = area }.MassFlow(Room, new GasState(pressure, 300)), 12);
    }
}
