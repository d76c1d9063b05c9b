namespace Tickover.Workshop.Visits.Gates;

/// <summary>How a gate of a visit stands, check by check.</summary>
/// <remarks>What counts is the order of keeping, never a clock; only the checks that hold for a day look at the calendar.</remarks>
/// <param name="Definition">The gate.</param>
/// <param name="State">Open, shut or overridden.</param>
/// <param name="Checks">Its checks in their order.</param>
/// <param name="Overrides">Every override of this visit, the latest last, whether it counts or not.</param>
/// <param name="Words">One sentence: how it stands and, where it is not open, what is missing.</param>
public sealed record GateStatus(
    GateDefinition Definition, GateState State, IReadOnlyList<CheckStatus> Checks, IReadOnlyList<OverrideStatus> Overrides, string Words)
{
    /// <summary>Whether work behind it may begin.</summary>
    public bool LetsThrough => State != GateState.Shut;

    /// <summary>Checks that are missing or stale.</summary>
    public IEnumerable<CheckStatus> Wanting => Checks.Where(c => c.State != CheckState.Signed);

    /// <summary>How a gate stands.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="gate">The gate.</param>
    /// <param name="today">The day by the workshop's calendar.</param>
    /// <returns>The status.</returns>
    public static GateStatus Of(VisitRecord record, Gate gate, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(record);
        return new GateReading(record, GateCatalogue.Of(gate), today).Status();
    }
}
