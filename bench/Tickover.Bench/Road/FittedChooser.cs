using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;
using Tickover.Workshop.JetChoice;

namespace Tickover.Bench.Road;

/// <summary>Ours: fit the car's model to all runs so far, take the best set sold.</summary>
internal sealed class FittedChooser : IChooser
{
    private const double WorthIt = 0.05;                   // of the expected cost: nobody opens carburettors for less

    /// <inheritdoc/>
    public RoadChoice Choose(Car now, IReadOnlyList<CalibrationRun> runs)
    {
        if (Calibrator.Fit(runs).Fit is not { } fit)
        {
            return new RoadChoice(null, null);
        }

        var advice = JetChooser.Choose(now, fit);
        var best = advice.IfOrdered;
        var enough = best.Changes.Count == 0 || advice.Now.Cost - best.Cost < WorthIt * advice.Now.Cost;
        var leftOut = new Tally((int)Math.Round(fit.LeftOutCoverage * fit.Points.Count), fit.Points.Count);
        return (enough ? new RoadChoice(null, null) : new RoadChoice(best.Car, best.Map)) with { LeftOut = leftOut };
    }
}
