using Tickover.Workshop.Logs;

namespace Tickover.Workshop.Calibration;

/// <summary>A reading beside what the fitted model says of it.</summary>
public sealed record FittedPoint
{
    /// <summary>Which run, from 0.</summary>
    public required int Run { get; init; }

    /// <summary>The reading.</summary>
    public required MixturePoint Point { get; init; }

    /// <summary>Opening taken, degrees: read, or told from the pressure behind the plate.</summary>
    public required double ThrottleDegrees { get; init; }

    /// <summary>λ of the model before any reading.</summary>
    public required double ExpectedLambda { get; init; }

    /// <summary>λ of the fitted model.</summary>
    public required double FittedLambda { get; init; }

    /// <summary>How much the reading counted, 1 in full, towards 0 for one far from the rest.</summary>
    public required double Weight { get; init; }

    /// <summary>Error of the prediction of this reading from the readings of the other regimes and speeds alone, as a part of λ.</summary>
    public required double LeftOutError { get; init; }

    /// <summary>Standard deviation that prediction claimed, as a part of λ.</summary>
    public required double LeftOutDeviation { get; init; }
}
