namespace Tickover.Web.Mixture;

/// <summary>One part changed on trial.</summary>
/// <param name="Part">Name of the part in the document, such as <c>idleJet</c>.</param>
/// <param name="Value">The trial size as typed.</param>
public sealed record TrialChange(string Part, string Value);
