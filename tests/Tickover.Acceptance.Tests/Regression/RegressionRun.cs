using Tickover.Physics.Estimation;

namespace Tickover.Acceptance.Tests.Regression;

/// <summary>The solver on one set from one published start.</summary>
/// <param name="Set">The set.</param>
/// <param name="Start">1 or 2.</param>
/// <param name="Found">What the solver found.</param>
public sealed record RegressionRun(RegressionSet Set, int Start, LeastSquaresResult Found)
{
    /// <summary>Most that eleven printed digits can show.</summary>
    public const int MostDigits = 10;

    // No settling on the cost: a valley as flat as Bennett5's is not yet known where the cost no longer changes.
    private static readonly LeastSquaresSettings Settings = new() { MaximumSteps = 5000, CostTolerance = 1e-20, ParameterTolerance = 1e-11 };

    /// <summary>Every set from both starts, solved once.</summary>
    public static IReadOnlyList<RegressionRun> All { get; } = [.. RegressionSet.All.SelectMany(set => new[] { Of(set, 1), Of(set, 2) })];

    /// <summary>Digits in common with the certified parameters, the worst of them: −log₁₀ of the relative difference.</summary>
    public double Digits => Found.Parameters.Zip(Set.Certified, (ours, theirs) => Common(ours, theirs)).Min();

    /// <summary>Digits in common with the certified residual sum of squares.</summary>
    public double DigitsOfSum => Common(2 * Found.Cost, Set.SumOfSquares);

    private static RegressionRun Of(RegressionSet set, int start) =>
        new(set, start, LeastSquares.Solve(b => RegressionModels.Residuals(set, b), start == 1 ? set.StartOne : set.StartTwo, Settings));

    private static double Common(double ours, double theirs) => -Math.Log10(Math.Max(Math.Abs(ours / theirs - 1), 1e-16));
}
