namespace Tickover.Workshop.Visits.Gates;

/// <summary>How one check of a gate stands.</summary>
/// <param name="Check">The check.</param>
/// <param name="State">How it stands.</param>
/// <param name="SignOff">The last signature; null where there is none.</param>
/// <param name="Initials">Who signed.</param>
/// <param name="StaleBecause">What happened since, in one sentence; empty unless stale.</param>
/// <param name="Words">One line to stand under the check: what was seen, who, when; or what is missing.</param>
public sealed record CheckStatus(GateCheck Check, CheckState State, SignOff? SignOff, string Initials, string StaleBecause, string Words);
