using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;
using Tickover.Workshop.JetChoice;

namespace Tickover.Bench.Road;

/// <summary>Ours: fit the car's model to all runs so far, take the best set sold.</summary>
internal sealed class FittedChooser : IChooser
{
    /// <inheritdoc/>
    public RoadChoice Choose(Car now, IReadOnlyList<CalibrationRun> runs)
    {
        if (Calibrator.Fit(runs).Fit is not { } fit)
        {
            return new RoadChoice(null, null);
        }

        var best = JetChooser.Choose(now, fit).IfOrdered;
        return best.Changes.Count == 0 ? new RoadChoice(null, null) : new RoadChoice(best.Car, best.Map);
    }
}
