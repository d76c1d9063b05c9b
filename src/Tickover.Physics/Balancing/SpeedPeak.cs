using MathNet.Numerics.LinearAlgebra;

namespace Tickover.Physics.Balancing;

/// <summary>Where an idle mixture screw gives the fastest running, from engine speeds at some positions of it: a Bayesian parabola.</summary>
/// <remarks>
/// docs/physics/balancing.md (15) to (18). The prior of the curvature is common practice: some 25 rpm lost a quarter of a turn either way at 900 rpm
/// (trade report 2.9). Numbers only.
/// </remarks>
public sealed record SpeedPeak
{
    private const double UnsureSpeed = 1000;
    private const double UnsureSlope = 400;

    /// <summary>Curvature expected, rpm lost a turn² from the peak.</summary>
    public double Curvature { get; init; } = 400;

    /// <summary>Its standard deviation, rpm a turn².</summary>
    public double CurvatureDeviation { get; init; } = 200;

    /// <summary>Standard deviation of a speed as read from an engine that hunts a little, rpm.</summary>
    public double SpeedDeviation { get; init; } = 8;

    /// <summary>Fits the parabola.</summary>
    /// <param name="readings">Position of the screw in turns from where it was found, positive richer, and the speed there in rpm; one at least.</param>
    /// <returns>The fit.</returns>
    public SpeedPeakFit Fit(IReadOnlyList<(double Turns, double Rpm)> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentOutOfRangeException.ThrowIfZero(readings.Count, nameof(readings));
        var level = readings.Average(r => r.Rpm);
        var basis = Matrix<double>.Build.DenseOfRows(readings.Select(r => new[] { 1, r.Turns, -r.Turns * r.Turns })); // (15)
        var off = Vector<double>.Build.DenseOfEnumerable(readings.Select(r => r.Rpm - level));
        var prior = Matrix<double>.Build.DenseOfDiagonalArray([Inverse(UnsureSpeed), Inverse(UnsureSlope), Inverse(CurvatureDeviation)]);
        var covariance = (prior + (Inverse(SpeedDeviation) * basis.TransposeThisAndMultiply(basis))).Inverse(); // (16)
        var mean = covariance * ((prior * Vector<double>.Build.Dense([0, 0, Curvature])) + (Inverse(SpeedDeviation) * basis.TransposeThisAndMultiply(off)));
        var (slope, bend) = (mean[1], Math.Max(mean[2], Curvature / 10));
        var at = slope / (2 * bend); // (17)
        var lean = Vector<double>.Build.Dense([0, 1 / (2 * bend), -at / bend]);
        return new SpeedPeakFit(at, Math.Sqrt(lean * covariance * lean), level + mean[0] + (slope * at) - (bend * at * at), mean[2], Math.Sqrt(covariance[2, 2]));
    }

    private static double Inverse(double deviation) => 1 / (deviation * deviation);
}
