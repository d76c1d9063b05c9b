namespace Tickover.Workshop.Visits;

/// <summary>One act as the journal shows it.</summary>
/// <param name="Number">Its number; acts are counted up, whatever the clock says.</param>
/// <param name="Words">What was done.</param>
/// <param name="At">When, by the server's clock.</param>
/// <param name="Person">Who, where that is known.</param>
/// <param name="Device">The tablet or program it came from.</param>
/// <param name="Visit">The visit it was done in.</param>
/// <param name="Undoes">The act it took back; null for other acts.</param>
/// <param name="UndoneBy">The act that took it back; null while it stands.</param>
/// <param name="Changes">What changed, item by item.</param>
public sealed record JournalLine(
    long Number, string Words, DateTimeOffset At, Id<Person>? Person, string Device, Id<Visit>? Visit, long? Undoes, long? UndoneBy, IReadOnlyList<JournalChange> Changes);
