namespace Tickover.Workshop.Calibration;

/// <summary>Maps foretold together.</summary>
/// <param name="LogLambda">Expected logarithm of λ, map after map.</param>
/// <param name="Covariance">Their covariance, [point, point].</param>
public sealed record JointPrediction(IReadOnlyList<double> LogLambda, double[,] Covariance);
