using Tickover.Workshop.Cars;
using Tickover.Workshop.JetChoice;
using Tickover.Workshop.Mixture;

namespace Tickover.Bench.Road;

/// <summary>How much each operating point counts in the study, and which are in target: the one place.</summary>
/// <remarks>
/// <see cref="RoadUse"/> on the sample car, 24 speeds by 16 openings: idle 10 %, steady road load 45 %, twice that load 20 %, wide open 25 %.
/// The truth is scored on the openings as they are, not as a sensor reads them. Banks count alike.
/// </remarks>
internal sealed class OperatingWeights
{
    private readonly SurveyGrid _grid;

    internal OperatingWeights(Car sample)
    {
        var map = MixtureSurvey.Run(sample).Map;
        _grid = map.Grid;
        All = RoadUse.Weights(map, sample.Engine.Si("engine.peakPowerSpeed") * 60 / (2 * Math.PI));
    }

    /// <summary>Weights in order of speed, then opening; they add up to one.</summary>
    internal IReadOnlyList<double> All { get; }

    /// <summary>Weighted part of the points in target.</summary>
    internal double InTarget(TruthMap truth, int banks) => Sum(truth, banks, (lambda, band) => lambda >= band.Richest && lambda <= band.Leanest ? 1 : 0);

    /// <summary>Weighted mean distance from the middle of target, in half widths of it: tells better from worse where the part in target does not.</summary>
    internal double Distance(TruthMap truth, int banks) => Sum(truth, banks, (lambda, band) =>
        Math.Min(5, Math.Abs(Math.Log(lambda / Math.Sqrt(band.Richest * band.Leanest))) / (0.5 * Math.Log(band.Leanest / band.Richest))));

    private double Sum(TruthMap truth, int banks, Func<double, LambdaBand, double> of)
    {
        var sum = 0.0;
        for (var p = 0; p < All.Count; p++)
        {
            var (i, j) = (p / _grid.ThrottleDegrees.Count, p % _grid.ThrottleDegrees.Count);
            for (var b = 1; b <= banks && All[p] > 0; b++)
            {
                sum += All[p] / banks * of(truth.At(b, i, j), MixtureTargets.At(_grid.ThrottleDegrees[j]));
            }
        }

        return sum;
    }
}
