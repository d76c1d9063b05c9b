using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.JetChoice;

/// <summary>What every set of a choice is judged on: the points that count, their weight and target, and what readings add there.</summary>
internal sealed class JetGround
{
    internal JetGround(Car car, IForecast forecast, JetTargets targets, CancellationToken cancellation)
    {
        Now = forecast.Predict(car, cancellation);
        Grid = Now.Grid;
        var survey = MixtureSurvey.Run(car, Grid, cancellation).Map;
        Weights = RoadUse.Weights(survey, car.Engine.Si("engine.peakPowerSpeed") * 60 / (2 * Math.PI));
        Targets = [.. Enumerable.Range(0, Weights.Count).Select(p => targets.At(Degrees(p)))];
        Cells = [.. Enumerable.Range(0, Weights.Count).Where(p => Weights[p] > 0)];
        var model = Read(forecast.Equivalence(car, cancellation), CalibrationGrid.Of(car));
        Correction = [.. Now.LogLambda.Zip(model, (all, alone) => all - alone)];
    }

    internal PredictedMap Now { get; }

    internal SurveyGrid Grid { get; }

    internal IReadOnlyList<double> Weights { get; }

    internal IReadOnlyList<LambdaBand> Targets { get; }

    /// <summary>Points of some weight.</summary>
    internal IReadOnlyList<int> Cells { get; }

    /// <summary>What readings add to the model's logarithm of λ, by point.</summary>
    internal IReadOnlyList<double> Correction { get; }

    internal double Rpm(int point) => Grid.SpeedsRpm[point / Grid.ThrottleDegrees.Count];

    internal double Degrees(int point) => Grid.ThrottleDegrees[point % Grid.ThrottleDegrees.Count];

    /// <summary>Logarithm of λ at every point of the fine grid, read off a coarse map.</summary>
    internal double[] Read(double[,,] equivalence, SurveyGrid coarse) =>
        [.. Enumerable.Range(0, Grid.SpeedsRpm.Count * Grid.ThrottleDegrees.Count).Select(p => MapReading.LogLambda(equivalence, coarse, 0, Rpm(p), Degrees(p)))];

    /// <summary>Cost of a map.</summary>
    internal double Cost(PredictedMap map) => Cells.Sum(p => Weights[p] * JetRisk.Of(map.LogLambda[p], map.Deviation(p), Targets[p]));

    /// <summary>Part of the driving that falls to a regime.</summary>
    internal double Share(string regime) => Cells.Where(p => string.Equals(Targets[p].Regime, regime, StringComparison.Ordinal)).Sum(p => Weights[p]);

    /// <summary>Probability of being in target, over the points of a regime or all, by weight.</summary>
    internal double InTarget(PredictedMap map, string? regime = null)
    {
        var points = Cells.Where(p => regime is null || string.Equals(Targets[p].Regime, regime, StringComparison.Ordinal)).ToList();
        return points.Count == 0 ? 0 : points.Sum(p => Weights[p] * JetRisk.InBand(map.LogLambda[p], map.Deviation(p), Targets[p])) / points.Sum(p => Weights[p]);
    }
}
