using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Logs;

/// <summary>Air through an engine, roughly: enough to tell how long exhaust is under way.</summary>
internal sealed class EngineAir
{
    private const double GasConstant = 287.05;           // J/(kg K), dry air
    private const double Efficiency = 0.85;              // volumetric, on the density behind the plate; common practice
    private const double CriticalFlow = 0.6847;          // √γ (2/(γ+1))^((γ+1)/(2(γ−1))) for γ = 1.4
    private const double Discharge = 0.75;               // of a throttle plate (common practice)
    private readonly double _displacement;
    private readonly double _plateArea;
    private readonly double _closedAngle;
    private readonly double _barometer;
    private readonly double _temperature;

    internal EngineAir(Car car)
    {
        var bore = car.Engine.Si("engine.bore");
        _displacement = Math.PI / 4 * bore * bore * car.Engine.Si("engine.stroke") * car.CylinderCount;
        _plateArea = car.Barrels.Sum(b => Math.PI / 4 * Math.Pow(b.Figures.Si("barrel.throttleBore"), 2));
        _closedAngle = car.Barrels[0].Figures.Si("barrel.closedAngle");
        _barometer = car.Ambient.Si("ambient.pressure");
        _temperature = car.Ambient.Si("ambient.temperature");
    }

    /// <summary>Air, kg/s.</summary>
    internal double At(double rpm, double degrees, double manifoldPascals)
    {
        var wanted = Efficiency * _displacement * rpm / 120 / (GasConstant * _temperature);
        if (double.IsFinite(manifoldPascals))
        {
            return wanted * manifoldPascals;
        }

        // Without a pressure: what the engine would take with no throttle, or what the plates let through, whichever is less.
        var open = 1 - Math.Cos(_closedAngle + degrees * Math.PI / 180) / Math.Cos(_closedAngle);
        var through = Discharge * _plateArea * open * CriticalFlow * _barometer / Math.Sqrt(GasConstant * _temperature);
        var full = wanted * _barometer;
        return full * through / Math.Sqrt(full * full + through * through);
    }
}
