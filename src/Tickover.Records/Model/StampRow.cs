namespace Tickover.Records.Model;

/// <summary>What makes a database a record of ours.</summary>
internal sealed class StampRow
{
    /// <summary>Which record; a copy has the same number.</summary>
    public Guid Record { get; init; }

    /// <summary>When it was begun.</summary>
    public DateTimeOffset BegunAt { get; init; }
}
