namespace Tickover.Workshop.FaultFinding;

/// <summary>Something in the car's own record that bears on its trouble: a symptom that was kept, or something measured that speaks for or against a cause.</summary>
public sealed record FaultEvidence
{
    /// <summary>What the record says, such as "round of 3 May: barrel 4 lean".</summary>
    public required string Words { get; init; }

    /// <summary>Key of the symptom it amounts to; empty where it bears on a cause.</summary>
    public string Symptom { get; init; } = string.Empty;

    /// <summary>Key of the cause it bears on; empty where it is a symptom.</summary>
    public string Cause { get; init; } = string.Empty;

    /// <summary>Whether it speaks against the cause.</summary>
    public bool Against { get; init; }
}
