using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;

namespace Tickover.Bench.Road;

/// <summary>A way of working: from the runs so far to the next jets. One for each car, for it may remember.</summary>
internal interface IChooser
{
    /// <summary>Chooses.</summary>
    /// <param name="now">The car as described, with the jets of the last run.</param>
    /// <param name="runs">The runs so far, the last one last.</param>
    /// <returns>What to fit.</returns>
    RoadChoice Choose(Car now, IReadOnlyList<CalibrationRun> runs);
}
