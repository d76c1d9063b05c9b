namespace Tickover.Web.Api;

/// <summary>A wish to step back or forth.</summary>
/// <param name="Key">Chosen by the sender; the same key sent twice steps once.</param>
/// <param name="Visit">Number of the visit; left out for the workshop's own things.</param>
public sealed record StepQuestion(Guid Key, string? Visit = null);
