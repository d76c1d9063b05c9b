using System.Diagnostics.CodeAnalysis;

namespace Tickover.Workshop.Exhaust;

/// <summary>What became of a typed gas reading.</summary>
/// <param name="Reading">The reading; null where something is wrong.</param>
/// <param name="Complaints">Everything that is wrong, each a sentence with the way out; empty where there is a reading.</param>
public sealed record GasEntryOutcome(GasReading? Reading, IReadOnlyList<string> Complaints)
{
    /// <summary>Whether there is a reading.</summary>
    [MemberNotNullWhen(true, nameof(Reading))]
    public bool Good => Reading is not null;
}
