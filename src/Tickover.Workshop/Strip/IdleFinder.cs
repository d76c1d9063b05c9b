using Tickover.Physics.Balancing;
using Tickover.Physics.Breathing;
using Tickover.Physics.Flow;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Strip;

/// <summary>Finds where an engine idles: the opening at which its work just turns it over, by the breathing model; or by its swept volume alone.</summary>
public static class IdleFinder
{
    private const double IdleLambda = 0.9;                  // CO of some 3 %, common practice
    private const double PetrolStoichiometric = 14.5;
    private const double MiddleFilling = (IdleAir.LeastFilling + IdleAir.MostFilling) / 2;
    private const double KilogramsAnHour = 3600;
    private const int MostSteps = 240;
    private static readonly double[] First = [0.1, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 8, 10, 13];

    /// <summary>Where a car idles.</summary>
    /// <param name="car">The car; its first barrel and those it shares a manifold with stand for all.</param>
    /// <param name="rpm">Idle speed, rpm; above zero.</param>
    /// <returns>The point; null where no opening from 0.1° to 13° makes it idle at this speed.</returns>
    public static IdlePoint? Of(Car car, double rpm)
    {
        ArgumentNullException.ThrowIfNull(car);
        var model = SurveyModel.Of(car);
        return Of(model, model.Engine, rpm);
    }

    /// <summary>By swept volume, where no car is described.</summary>
    /// <param name="sweptCubicMetres">Swept volume one barrel feeds, m³; above zero.</param>
    /// <param name="rpm">Idle speed, rpm; above zero.</param>
    /// <param name="depressionPascals">Depression behind the plate, Pa.</param>
    /// <param name="outside">The air of the day.</param>
    /// <returns>The point.</returns>
    public static IdlePoint Of(double sweptCubicMetres, double rpm, double depressionPascals, GasState outside)
    {
        var air = IdleAir.KilogramsPerSecond(sweptCubicMetres, rpm, MiddleFilling);
        return new IdlePoint
        {
            Rpm = rpm,
            KilogramsPerSecond = air,
            BehindPascals = [outside.PressurePascals - depressionPascals],
            Outside = outside,
            FuelKilogramsPerSecond = air / (IdleLambda * PetrolStoichiometric),
            Origin = SheetText.Line($"by {1e6 * sweptCubicMetres:0} cm³ a barrel at {rpm:0} rpm, filled to {MiddleFilling:0.00} (±{(IdleAir.MostFilling - IdleAir.LeastFilling) / 2:0.00}, common practice): {KilogramsAnHour * air:0.0} kg/h a barrel at the depression written, {depressionPascals / 1000:0} kPa"),
        };
    }

    /// <summary>Where an engine idles that is described in SI.</summary>
    /// <param name="model">Air, fuel.</param>
    /// <param name="engine">The engine, perhaps with a leak added.</param>
    /// <param name="rpm">Idle speed, rpm.</param>
    /// <returns>The point; null where there is none.</returns>
    internal static IdlePoint? Of(SurveyModel model, EngineSpec engine, double rpm)
    {
        var group = engine.Groups[0];
        var friction = EngineFriction.MeanPressurePascals(rpm) * engine.Cylinder.SweptVolumeCubicMetres;
        AirSide Solve(params double[] openings) => AirSideSolver.Solve(engine, group, model.Ambient, new OperatingGrid([rpm], openings));
        if (Crossing(Solve(First), First, friction) is not { } coarse)
        {
            return null;
        }

        double[] near = [Math.Max(0, coarse * 0.9), coarse * 0.97, coarse * 1.03, coarse * 1.1];
        var fine = Crossing(Solve(near), near, friction) ?? coarse;
        var air = Solve(fine);
        var perBarrel = air.At(0, 0).AirKilogramsPerCycle.Average() * rpm / 120;
        var behind = air.Trace(0, 0, 0).DownstreamPascals;
        var every = Math.Max(1, behind.Count / MostSteps);
        return new IdlePoint
        {
            Rpm = rpm,
            KilogramsPerSecond = perBarrel,
            BehindPascals = [.. behind.Where((_, i) => i % every == 0)],
            Outside = new GasState(model.Ambient.PressurePascals, model.Ambient.TemperatureKelvin),
            PlateDegrees = fine,
            FuelKilogramsPerSecond = perBarrel / (IdleLambda * model.Fuel.StoichiometricRatio),
            Origin = SheetText.Line($"by the breathing model of this car at {rpm:0} rpm: {KilogramsAnHour * perBarrel:0.0} kg/h a barrel, plate {fine:0.0}° off its seat, {(model.Ambient.PressurePascals - behind.Average()) / 1000:0} kPa of depression"),
        };
    }

    // opening at which the work of a cylinder just meets the friction
    private static double? Crossing(AirSide air, double[] openings, double friction)
    {
        double Over(int i) => air.At(0, i).WorkJoulesPerCycle - friction;
        if (Over(0) >= 0)
        {
            return openings[0];
        }

        for (var i = 1; i < openings.Length; i++)
        {
            if (Over(i) >= 0)
            {
                return openings[i - 1] + ((openings[i] - openings[i - 1]) * -Over(i - 1) / (Over(i) - Over(i - 1)));
            }
        }

        return null;
    }
}
