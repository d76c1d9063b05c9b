using Tickover.Physics.Balancing;
using Tickover.Physics.Breathing;
using Tickover.Physics.Flow;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.StripDown;

/// <summary>Finds where an engine idles: the opening at which its work just turns it over, by the breathing model; or by its swept volume alone.</summary>
public static class IdleFinder
{
    /// <summary>λ that mixture screws are set to at idle, 1: CO of some 3 %, common practice.</summary>
    public const double IdleLambda = 0.9;

    private const double PetrolStoichiometric = 14.5;
    private const double MiddleFilling = (IdleAir.LeastFilling + IdleAir.MostFilling) / 2;
    private const double KilogramsAnHour = 3600;
    private const double RpmPerCycle = 120;             // rpm over this: cycles a second of a four-stroke
    private const double StandardPressure = 101_325;
    private const double RoomTemperature = 293.15;
    private const int MostSteps = 240;
    private static readonly double[] First = [0.1, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 8, 10, 13];

    /// <summary>Where a car idles.</summary>
    /// <param name="car">The car; its first barrel and those it shares a manifold with stand for all.</param>
    /// <param name="rpm">Idle speed, rpm; above zero.</param>
    /// <param name="measured">Air of one barrel as a dial meter read it at idle, kg/s; null where it was not read, then the opening is the one whose work just meets friction.</param>
    /// <returns>The point; null where no opening from 0.1° to 13° makes it idle at this speed.</returns>
    public static IdlePoint? Of(Car car, double rpm, double? measured = null)
    {
        ArgumentNullException.ThrowIfNull(car);
        var model = SurveyModel.Of(car);
        var (engine, group) = (model.Engine, model.Engine.Groups[0]);
        var friction = EngineFriction.MeanPressurePascals(rpm) * engine.Cylinder.SweptVolumeCubicMetres;
        AirSide Solve(params double[] openings) => AirSideSolver.Solve(engine, group, model.Ambient, new OperatingGrid([rpm], openings));
        double Over(AirPoint point) => measured is { } read ? (point.AirKilogramsPerCycle.Average() * rpm / RpmPerCycle) - read : point.WorkJoulesPerCycle - friction;
        if (Crossing(Solve(First), First, Over) is not { } coarse)
        {
            return null;
        }

        double[] near = [coarse * 0.9, coarse * 0.97, coarse * 1.03, coarse * 1.1];
        var fine = Crossing(Solve(near), near, Over) ?? coarse;
        return Point(model, Solve(fine), fine, measured is not null);
    }

    /// <summary>By swept volume, where no car is described.</summary>
    /// <param name="sweptCubicMetres">Swept volume one barrel feeds, m³; above zero.</param>
    /// <param name="rpm">Idle speed, rpm; above zero.</param>
    /// <param name="depressionPascals">Depression behind the plate, Pa.</param>
    /// <param name="measured">Air of one barrel as a dial meter read it at idle, kg/s; null where it was not read.</param>
    /// <returns>The point.</returns>
    public static IdlePoint Of(double sweptCubicMetres, double rpm, double depressionPascals, double? measured = null)
    {
        var outside = new GasState(StandardPressure, RoomTemperature);
        var air = measured ?? IdleAir.KilogramsPerSecond(sweptCubicMetres, rpm, MiddleFilling);
        return new IdlePoint
        {
            Rpm = rpm,
            KilogramsPerSecond = air,
            BehindPascals = [outside.PressurePascals - depressionPascals],
            Outside = outside,
            FuelKilogramsPerSecond = air / (IdleLambda * PetrolStoichiometric),
            Origin = measured is not null ? SheetText.Line($"as measured at {rpm:0} rpm: {KilogramsAnHour * air:0.0} kg/h a barrel at the depression written, {depressionPascals / 1000:0} kPa") : SheetText.Line($"by {1e6 * sweptCubicMetres:0} cm³ a barrel at {rpm:0} rpm, filled to {MiddleFilling:0.00} (±{(IdleAir.MostFilling - IdleAir.LeastFilling) / 2:0.00}, common practice): {KilogramsAnHour * air:0.0} kg/h a barrel at the depression written, {depressionPascals / 1000:0} kPa"),
        };
    }

    private static IdlePoint Point(SurveyModel model, AirSide air, double opening, bool isMeasured)
    {
        var rpm = air.Grid.SpeedsRpm[0];
        var perBarrel = air.At(0, 0).AirKilogramsPerCycle.Average() * rpm / RpmPerCycle;
        var behind = air.Trace(0, 0, 0).DownstreamPascals;
        var every = Math.Max(1, behind.Count / MostSteps);
        var swept = air.Engine.Cylinder.SweptVolumeCubicMetres * air.Group.Cylinders.Count / air.Group.Barrels.Count;
        var (least, most) = (IdleAir.KilogramsPerSecond(swept, rpm, IdleAir.LeastFilling), IdleAir.KilogramsPerSecond(swept, rpm, IdleAir.MostFilling));
        return new IdlePoint
        {
            Rpm = rpm,
            KilogramsPerSecond = perBarrel,
            BehindPascals = [.. behind.Where((_, i) => i % every == 0)],
            Outside = new GasState(model.Ambient.PressurePascals, model.Ambient.TemperatureKelvin),
            PlateDegrees = opening,
            FuelKilogramsPerSecond = perBarrel / (IdleLambda * model.Fuel.StoichiometricRatio),
            Origin = SheetText.Line($"{(isMeasured ? "as measured" : "by the breathing model of this car")} at {rpm:0} rpm: {KilogramsAnHour * perBarrel:0.0} kg/h a barrel; by the model plates {opening:0.0}° off their seats and {(model.Ambient.PressurePascals - behind.Average()) / 1000:0} kPa of depression"),
            Doubt = isMeasured || (perBarrel >= least && perBarrel <= most) ? ""
                : SheetText.Line($"Engines of this size usually take {KilogramsAnHour * least:0.0} to {KilogramsAnHour * most:0.0} kg/h a barrel at this speed (common practice); the model has no late spark and no drag of the gearbox in it. Where idle air was measured, write it as \"idleAir\": shares go by it."),
        };
    }

    // opening at which what is wanted turns from too little to enough
    private static double? Crossing(AirSide air, double[] openings, Func<AirPoint, double> over)
    {
        double Over(int i) => over(air.At(0, i));
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
