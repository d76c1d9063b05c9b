using Tickover.Physics.Air;
using Tickover.Physics.Breathing;
using Tickover.Physics.Fuels;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Mixture;

/// <summary>A car across the border: engine, air and fuel in SI.</summary>
internal sealed record SurveyModel(EngineSpec Engine, AmbientAir Ambient, FuelProperties Fuel, double RatedSpeedRpm)
{
    internal static SurveyModel Of(Car car) => new(
        car.ToEngineSpec(),
        car.ToAmbientAir(),
        car.ToFuelProperties(),
        car.Engine.Si("engine.peakPowerSpeed") * 60 / (2 * Math.PI));
}
