namespace Tickover.Physics.Sending;

/// <summary>A drive of two tanks.</summary>
/// <param name="Moments">What was kept, at even times, the beginning first.</param>
/// <param name="Validity">Whether the surface stayed flat enough and the pull towards the floor strong enough for the model.</param>
/// <param name="DrySeconds">How long the pick-up drew air, s.</param>
public sealed record SendingRun(IReadOnlyList<SendingMoment> Moments, Validity Validity, double DrySeconds);
