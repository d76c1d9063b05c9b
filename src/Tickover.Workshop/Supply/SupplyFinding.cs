using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Supply;

/// <summary>One thing a supply was looked at for.</summary>
public sealed record SupplyFinding
{
    /// <summary>What, in a few words.</summary>
    public required string Heading { get; init; }

    /// <summary>How it stands.</summary>
    public required SupplyStanding Standing { get; init; }

    /// <summary>The margin as it is shown large, such as "1.8 times".</summary>
    public required string Margin { get; init; }

    /// <summary>What is so, in one or two sentences.</summary>
    public required string Words { get; init; }

    /// <summary>What to look at or do; empty where nothing is called for.</summary>
    public string Next { get; init; } = "";

    /// <summary>How it was worked out.</summary>
    public IReadOnlyList<WorkingStep> Working { get; init; } = [];
}
