using Tickover.Workshop.Calibration;
using Tickover.Workshop.Mixture;

namespace Tickover.Web.RoadLogs;

/// <summary>A foretold mixture in the form the pictures of maps take.</summary>
internal static class ForetoldMap
{
    /// <summary>The map.</summary>
    /// <param name="predicted">What is foretold.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static MixtureMap Of(PredictedMap predicted, CancellationToken cancellation)
    {
        // What else a point tells, air and depression and whether the car drives the engine, is the model's own.
        var map = MixtureSurvey.Run(predicted.Car, predicted.Grid, cancellation).Map;
        var (model, openings) = (map.Barrels[0], predicted.Grid.ThrottleDegrees.Count);
        var points = (BarrelPoint[,])model.Points.Clone();
        for (var p = 0; p < points.Length; p++)
        {
            var point = points[p / openings, p % openings];
            var lambda = predicted.Lambda(p);
            points[p / openings, p % openings] = point with { Lambda = lambda, AirFuelRatio = point.Lambda > 0 ? point.AirFuelRatio * lambda / point.Lambda : 0 };
        }

        return map with
        {
            Barrels = [model with { Points = points, AlikeBarrels = [.. predicted.Car.Barrels.Select(b => b.Number)] }],
            RelativeBand = Normal.Ninety * Enumerable.Range(0, points.Length).Average(predicted.Deviation),
        };
    }
}
