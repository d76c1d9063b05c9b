using Tickover.Physics.Inspection;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.StripDown.Levels;

/// <summary>Works out what a millimetre of level does: on the car's own model, or for a plain jet at a signal.</summary>
internal static class LevelMixtures
{
    private const double WideOpen = 75;
    private const double Millimetres = 1000;

    // where the circuits take over from each other: speed, opening
    private static readonly (string Regime, int Speed, int Opening)[] Places = [("idle", 0, 0), ("where the main circuit begins", 1, 1), ("cruise", 1, 2), ("full load", 1, 3)];

    /// <summary>What a millimetre more does.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="lip">Height of the lip over the middle level, mm; null where it is not known.</param>
    /// <returns>One line a place; none where nothing can be told.</returns>
    public static IReadOnlyList<LevelMixture> Of(LevelSheet sheet, double? lip) =>
        sheet.Car is { } car ? OnCar(car)
        : lip is { } height && Plain(sheet, 1, height) is { } part ? [new LevelMixture("a plain jet at the signal named", 0, 0, sheet.Signal, part, null, null)]
        : [];

    /// <summary>What a rise does to a plain jet at the sheet's signal.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="rise">Rise, mm.</param>
    /// <param name="lip">Height of the lip before, mm.</param>
    /// <returns>Part of the fuel; null where the signal does not lift fuel to the lip.</returns>
    public static double? Plain(LevelSheet sheet, double rise, double lip) => sheet.Signal > sheet.Density * 9.80665 * lip / Millimetres
        ? FloatSetting.FuelChange(rise / Millimetres, lip / Millimetres, sheet.Signal, sheet.Density)
        : null;

    private static IReadOnlyList<LevelMixture> OnCar(Car car)
    {
        var grid = new SurveyGrid { SpeedsRpm = [1000, 2500], ThrottleDegrees = [2, 14.5, 18, WideOpen] };
        var height = car.Barrels[0].Figures.Si("barrel.floatLevel") * Millimetres;
        var higher = CarDocument.Change(car, "barrel.floatLevel", SheetText.Line($"{height - 1:0.###} mm")).Car;
        if (higher is null)
        {
            return [];
        }

        var before = MixtureSurvey.Run(car, grid);
        var (was, now) = (before.Map.ForBarrel(1), before.Trial(higher).Map.ForBarrel(1));
        return [.. from place in Places
                   let a = was.Points[place.Speed, place.Opening]
                   let b = now.Points[place.Speed, place.Opening]
                   where a.FuelKilogramsPerSecond > 0 && b.FuelKilogramsPerSecond > 0 && !a.Validity.HasFlag(PointValidity.NotSettled)
                   select new LevelMixture(place.Regime, grid.SpeedsRpm[place.Speed], grid.ThrottleDegrees[place.Opening], a.MeanDepressionPascals, (b.FuelKilogramsPerSecond / a.FuelKilogramsPerSecond) - 1, a.Lambda, b.Lambda)];
    }
}
