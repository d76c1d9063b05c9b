namespace Tickover.Workshop.Leaks;

/// <summary>What a leak test says, and why.</summary>
/// <param name="Kind">What.</param>
/// <param name="Heading">In a line.</param>
/// <param name="Why">Why.</param>
/// <param name="IsNo">Whether the test is not passed.</param>
public sealed record LeakVerdict(LeakVerdictKind Kind, string Heading, string Why, bool IsNo);
