namespace Tickover.Web.Api;

/// <summary>Both maps and both workings of a trial.</summary>
/// <param name="Fitted">Map of the car as it is.</param>
/// <param name="Trial">Map of the car as it would be.</param>
/// <param name="FittedPoint">Working at the point, as it is.</param>
/// <param name="TrialPoint">Working at the point, as it would be.</param>
/// <param name="Milliseconds">Time the trial took on the server, ms.</param>
public sealed record TrialAnswer(
    MixtureAnswer Fitted, MixtureAnswer Trial, ExplainAnswer FittedPoint, ExplainAnswer TrialPoint, double Milliseconds);
