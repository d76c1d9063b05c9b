using Tickover.Workshop.Mixture;

namespace Tickover.Web.Api;

/// <summary>A point as programs see it; a figure that does not exist there is null.</summary>
/// <param name="Lambda">λ.</param>
/// <param name="AirFuelRatio">Mass of air to mass of fuel.</param>
/// <param name="AirKilogramsPerSecond">Air, kg/s.</param>
/// <param name="FuelKilogramsPerSecond">Fuel, kg/s.</param>
/// <param name="Feeding">The circuit that feeds most.</param>
/// <param name="Validity">Names of what to be careful about; empty where nothing is.</param>
public sealed record PointAnswer(
    double? Lambda, double? AirFuelRatio, double? AirKilogramsPerSecond, double? FuelKilogramsPerSecond, string Feeding, IReadOnlyList<string> Validity)
{
    /// <summary>Says it of a point.</summary>
    /// <param name="point">The point.</param>
    /// <returns>The answer.</returns>
    public static PointAnswer Of(BarrelPoint point)
    {
        var mixture = (point.Validity & (PointValidity.NoAir | PointValidity.NoFuel)) == PointValidity.Inside;
        return new PointAnswer(
            mixture ? Finite(point.Lambda) : null,
            mixture ? Finite(point.AirFuelRatio) : null,
            Finite(point.AirKilogramsPerSecond),
            Finite(point.FuelKilogramsPerSecond),
            point.Feeding.ToString(),
            [.. Enum.GetValues<PointValidity>().Where(f => f != PointValidity.Inside && point.Validity.HasFlag(f)).Select(f => f.ToString())]);
    }

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
