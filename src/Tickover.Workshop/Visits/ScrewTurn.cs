namespace Tickover.Workshop.Visits;

/// <summary>Something done between the rounds of balancing: a screw turned, rods off or on, a rod offered, a stop looked at, a fault looked for. A fact.</summary>
public sealed record ScrewTurn : RecordItem<ScrewTurn>, IOfVisit, IAppendOnly
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>What was done.</summary>
    public ScrewTurnKind Kind { get; init; }

    /// <summary>Key of the adjuster turned, offered or looked at, such as "bypass:4"; of a fault looked for, the fault and its place. Empty where it concerns none.</summary>
    public string Adjuster { get; init; } = "";

    /// <summary>Turns, positive as the plan counts: more air, or richer; 0 where nothing was turned.</summary>
    public double Turns { get; init; }

    /// <summary>What was measured, mm: the gap of a stop, or how much a rod is too long (+) or too short (−); null where nothing was.</summary>
    public double? GapMillimetres { get; init; }

    /// <summary>Whether a fault that was looked for was there and was put right.</summary>
    public bool Found { get; init; }

    /// <summary>Whether it was what the advice asked for.</summary>
    public bool Advised { get; init; }

    /// <summary>As it is said, such as "Carburettor 2, rear barrel, by-pass screw: out ⅛".</summary>
    public string Words { get; init; } = "";

    /// <summary>Anything to remember of it.</summary>
    public string Note { get; init; } = "";

    /// <summary>When it was done, by the clock of the tablet.</summary>
    public DateTimeOffset TakenAt { get; init; }
}
