using Tickover.Reports.Mixture;
using Tickover.Workshop.Calibration;

namespace Tickover.Reports.Fits;

/// <summary>Readings of a fit as points on a map of what was fitted when they were taken.</summary>
public static class FitPoints
{
    /// <summary>The readings taken with a car's jets.</summary>
    /// <param name="fit">The fit.</param>
    /// <param name="document">The car's document: readings taken with others do not belong on its map.</param>
    /// <returns>The points, each with what the fit says there and how far off it may be.</returns>
    public static IReadOnlyList<MeasuredPoint> On(CarFit fit, string document)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return
        [
            .. fit.Points.Where(p => string.Equals(fit.Runs[p.Run].Car.Document, document, StringComparison.Ordinal))
                .Select(p => new MeasuredPoint(new MapSpot(p.Point.SpeedRpm, p.ThrottleDegrees), p.Point.Lambda, p.Point.Count)
                {
                    Expected = p.FittedLambda,
                    Half = new Residual(p, fit.FieldDeviation).Half,
                }),
        ];
    }
}
