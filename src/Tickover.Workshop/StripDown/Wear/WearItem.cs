namespace Tickover.Workshop.StripDown.Wear;

/// <summary>One thing measured, judged.</summary>
public sealed record WearItem
{
    /// <summary>Where, such as "barrel 3" or "front".</summary>
    public required string Where { get; init; }

    /// <summary>What was measured.</summary>
    public required WearKind Kind { get; init; }

    /// <summary>How bad it is.</summary>
    public required WearGrade Grade { get; init; }

    /// <summary>What was measured, with its band and unit.</summary>
    public required string Measured { get; init; }

    /// <summary>What it is held against, with its origin.</summary>
    public required string Limit { get; init; }

    /// <summary>Air it lets past at idle, kg/h; null where it lets none past.</summary>
    public double? KilogramsAnHour { get; init; }

    /// <summary>From, where a band can be told, kg/h.</summary>
    public double? Least { get; init; }

    /// <summary>To, kg/h.</summary>
    public double? Most { get; init; }

    /// <summary>The same as a part of the barrel's idle air, 1.</summary>
    public double? Share { get; init; }

    /// <summary>What it does and what to do, in words.</summary>
    public required string Words { get; init; }
}
