using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Visits;

namespace Tickover.Workshop.JetChoice;

/// <summary>A set of jets with what to expect of it.</summary>
public sealed record JetProposal
{
    /// <summary>The car with the set.</summary>
    public required Car Car { get; init; }

    /// <summary>What to change, in the order of work; empty where nothing should be.</summary>
    public required IReadOnlyList<JetChange> Changes { get; init; }

    /// <summary>The mixture expected, with its band.</summary>
    public required PredictedMap Map { get; init; }

    /// <summary>Probability of being in target, by regime, over the points weighted by use.</summary>
    public required IReadOnlyList<(string Regime, double Probability)> InTarget { get; init; }

    /// <summary>The same over all regimes.</summary>
    public required double InTargetOverall { get; init; }

    /// <summary>90 % band of the share of driving in target, of which <see cref="InTargetOverall"/> is the mean.</summary>
    public required (double Lowest, double Highest) ShareBand { get; init; }

    /// <summary>Mean λ with its band, by regime.</summary>
    public required IReadOnlyList<ExpectedRegime> Expected { get; init; }

    /// <summary>Expected cost: what the search made least.</summary>
    public required double Cost { get; init; }
}
