using System.Collections.Concurrent;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;
using Tickover.Workshop.StripDown;

namespace Tickover.Workshop.Supply;

/// <summary>What a car takes wide open and at idle, by the models that give its mixture.</summary>
/// <remarks>Answers are kept by the text of the car: a document is read again for every page that tells of it, and the models take a hundred times as long as the line. Safe to share between threads.</remarks>
internal static class CarDemand
{
    private const PointValidity NoFigure = PointValidity.NotSettled | PointValidity.NoAir | PointValidity.NoFuel;
    private const int MostKept = 32;

    private static readonly ConcurrentDictionary<(string Car, double Rpm), CarFuel?> Full = [];
    private static readonly ConcurrentDictionary<(string Car, double Rpm), IdlePoint?> Little = [];

    /// <summary>The speeds a car is described for.</summary>
    /// <param name="car">The car.</param>
    /// <returns>rpm, rising.</returns>
    public static IReadOnlyList<double> Speeds(Car car) => MixtureSurvey.DefaultGrid(car).SpeedsRpm;

    /// <summary>Wide open.</summary>
    /// <param name="car">The car.</param>
    /// <param name="rpm">Speed, rpm; above zero; null for the one where it takes most.</param>
    /// <returns>It; null where the models give no figure.</returns>
    public static CarFuel? WideOpen(Car car, double? rpm) =>
        Kept(Full, (car.Document, rpm ?? 0), () => At(car, rpm is { } one ? [one] : Speeds(car)).MaxBy(point => point.FuelKilogramsPerSecond)); // supply (35)

    /// <summary>One barrel at idle, with the plates where the engine's work just turns it over and the screws set.</summary>
    /// <param name="car">The car.</param>
    /// <param name="rpm">Idle speed, rpm; above zero.</param>
    /// <returns>It; null where the model finds no idle.</returns>
    public static IdlePoint? Idle(Car car, double rpm) => Kept(Little, (car.Document, rpm), () => IdleFinder.Of(car, rpm));

    private static T? Kept<T>(ConcurrentDictionary<(string Car, double Rpm), T?> kept, (string Car, double Rpm) key, Func<T?> find)
        where T : class
    {
        if (kept.Count >= MostKept && !kept.ContainsKey(key))
        {
            kept.Clear();
        }

        return kept.GetOrAdd(key, _ => find());
    }

    private static IEnumerable<CarFuel> At(Car car, IReadOnlyList<double> speeds)
    {
        var wide = MixtureSurvey.DefaultGrid(car).ThrottleDegrees[^1];
        var map = MixtureSurvey.Run(car, new SurveyGrid { SpeedsRpm = speeds, ThrottleDegrees = [wide] }).Map;
        return from i in Enumerable.Range(0, speeds.Count)
               where map.Barrels.All(barrel => (barrel.Points[i, 0].Validity & NoFigure) == PointValidity.Inside)
               select Sum(map, i);
    }

    private static CarFuel Sum(MixtureMap map, int speed)
    {
        double All(Func<BarrelPoint, double> figure) => map.Barrels.Sum(barrel => barrel.AlikeBarrels.Count * figure(barrel.Points[speed, 0]));
        var one = map.Barrels[0].Points[speed, 0];
        var (air, fuel) = (All(point => point.AirKilogramsPerSecond), All(point => point.FuelKilogramsPerSecond));
        return new CarFuel
        {
            Rpm = map.Grid.SpeedsRpm[speed],
            ThrottleDegrees = map.Grid.ThrottleDegrees[0],
            AirKilogramsPerSecond = air,
            FuelKilogramsPerSecond = fuel,
            Lambda = air / fuel * one.Lambda / one.AirFuelRatio, // λ over the ratio is the same for every barrel
            RelativeBand = map.RelativeBand,
        };
    }
}
