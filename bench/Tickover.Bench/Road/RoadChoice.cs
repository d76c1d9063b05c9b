using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;

namespace Tickover.Bench.Road;

/// <summary>What is fitted after a run.</summary>
/// <param name="Next">The car with the jets for the next run; null to leave it as it is.</param>
/// <param name="Expected">The map expected with them and its bands, where the way of working has one.</param>
internal sealed record RoadChoice(Car? Next, PredictedMap? Expected)
{
    /// <summary>Readings left out and foretold from the others, and how many lay within their 90 % band.</summary>
    internal Tally LeftOut { get; init; }
}
