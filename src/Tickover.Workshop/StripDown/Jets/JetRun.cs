namespace Tickover.Workshop.StripDown.Jets;

/// <summary>A jet as it was measured.</summary>
public sealed record JetRun
{
    /// <summary>What it is, such as "main jet".</summary>
    public required string Part { get; init; }

    /// <summary>Where it sat, such as "barrel 3".</summary>
    public required string Where { get; init; }

    /// <summary>What is stamped on it; empty where nothing can be read.</summary>
    public string Stamp { get; init; } = "";

    /// <summary>Largest pin gauge that goes in, mm; null where none was tried.</summary>
    public double? PinMillimetres { get; init; }

    /// <summary>Volume that ran through, ml; null where it was not on the bench.</summary>
    public double? Millilitres { get; init; }

    /// <summary>Time it took, s; null where it was not on the bench.</summary>
    public double? Seconds { get; init; }
}
