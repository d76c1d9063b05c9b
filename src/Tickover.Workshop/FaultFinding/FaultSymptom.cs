namespace Tickover.Workshop.FaultFinding;

/// <summary>What is seen, heard or smelled, and the causes that bring it about.</summary>
public sealed record FaultSymptom
{
    /// <summary>Its key, such as <c>no-idle</c>.</summary>
    public required string Key { get; init; }

    /// <summary>Heading of the list it stands under.</summary>
    public required string Group { get; init; }

    /// <summary>The symptom as the trade says it.</summary>
    public required string Words { get; init; }

    /// <summary>Other words for it.</summary>
    public IReadOnlyList<string> Also { get; init; } = [];

    /// <summary>Chance to meet it without any of the causes, 0 to 1.</summary>
    public required double Leak { get; init; }

    /// <summary>Chance that a cause alone brings it about, by the cause's key, 0 to 1.</summary>
    public required IReadOnlyDictionary<string, double> Causes { get; init; }

    /// <summary>Where the row comes from.</summary>
    public required string Origin { get; init; }

    /// <summary>How far it may be trusted: low, middling or high.</summary>
    public required string Confidence { get; init; }
}
