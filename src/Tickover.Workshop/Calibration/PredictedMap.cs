using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Calibration;

/// <summary>The mixture expected over the map, with its band; points in order of speed, then opening.</summary>
public sealed record PredictedMap
{
    /// <summary>The car it is of.</summary>
    public required Car Car { get; init; }

    /// <summary>Its speeds and openings.</summary>
    public required SurveyGrid Grid { get; init; }

    /// <summary>Natural logarithm of λ, by point.</summary>
    public required IReadOnlyList<double> LogLambda { get; init; }

    /// <summary>Covariance of the logarithms, [point, point].</summary>
    public required double[,] Covariance { get; init; }

    /// <summary>Expected λ of a point.</summary>
    /// <param name="point">Index: speed times the number of openings, and the opening.</param>
    /// <returns>λ, 1.</returns>
    public double Lambda(int point) => Math.Exp(LogLambda[point]);

    /// <summary>Standard deviation at a point, as a part of λ.</summary>
    /// <param name="point">Index of the point.</param>
    /// <returns>The deviation, 1.</returns>
    public double Deviation(int point) => Math.Sqrt(Math.Max(0, Covariance[point, point]));

    /// <summary>The 90 % band of a point.</summary>
    /// <param name="point">Index of the point.</param>
    /// <returns>Richest and leanest λ.</returns>
    public (double Richest, double Leanest) Band(int point)
    {
        var half = Normal.Ninety * Deviation(point);
        return (Math.Exp(LogLambda[point] - half), Math.Exp(LogLambda[point] + half));
    }
}
