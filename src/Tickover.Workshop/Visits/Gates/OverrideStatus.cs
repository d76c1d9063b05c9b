namespace Tickover.Workshop.Visits.Gates;

/// <summary>One override of a gate, shown as plainly as a check and kept in sight when it counts no longer.</summary>
/// <param name="SignOff">Reason, name and day.</param>
/// <param name="Initials">Who.</param>
/// <param name="StaleBecause">What undid it since; empty while it counts.</param>
/// <param name="Words">One line: who, when, why, and what was not checked.</param>
public sealed record OverrideStatus(SignOff SignOff, string Initials, string StaleBecause, string Words)
{
    /// <summary>Whether it still opens the gate.</summary>
    public bool Counts => StaleBecause.Length == 0;
}
