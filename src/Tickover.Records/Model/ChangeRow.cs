namespace Tickover.Records.Model;

/// <summary>What an act did to one item.</summary>
internal sealed class ChangeRow
{
    /// <summary>The act.</summary>
    public long Act { get; init; }

    /// <summary>Place among the changes of the act, from 0.</summary>
    public int Ordinal { get; init; }

    /// <summary>Kind of the item.</summary>
    public string Kind { get; init; } = "";

    /// <summary>The item.</summary>
    public Guid Item { get; init; }

    /// <summary>Version of the item after the act.</summary>
    public int Version { get; init; }

    /// <summary>The item before, as JSON; null where it was new.</summary>
    public string? Before { get; init; }

    /// <summary>The item after, as JSON.</summary>
    public string After { get; init; } = "";
}
