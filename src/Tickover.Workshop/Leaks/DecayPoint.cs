namespace Tickover.Workshop.Leaks;

/// <summary>One reading of a test, as read and as it would have stood at the mean temperature and the first barometer.</summary>
/// <param name="Minutes">Time, min.</param>
/// <param name="GaugePascals">As read, Pa.</param>
/// <param name="CorrectedPascals">Corrected, Pa.</param>
/// <param name="FittedPascals">On the fitted line, Pa.</param>
public readonly record struct DecayPoint(double Minutes, double GaugePascals, double CorrectedPascals, double FittedPascals);
