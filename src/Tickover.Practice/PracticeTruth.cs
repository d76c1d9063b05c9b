namespace Tickover.Practice;

/// <summary>What is true of the engine as it stands, without instrument, wander or unrest. For studies and for the end of a lesson; whoever balances must not look.</summary>
public sealed record PracticeTruth
{
    /// <summary>Idle speed, rpm; 0 where it stalls.</summary>
    public required double IdleRpm { get; init; }

    /// <summary>Air at idle barrel by barrel, kg/h; empty where it stalls.</summary>
    public required IReadOnlyList<double> IdleAir { get; init; }

    /// <summary>Air off idle barrel by barrel, kg/h, by held speed in rpm; empty where it cannot be held.</summary>
    public required IReadOnlyDictionary<double, IReadOnlyList<double>> RaisedAir { get; init; }

    /// <summary>Whether all is within limits at idle.</summary>
    public required bool IdleWithin { get; init; }

    /// <summary>Whether all is within limits off idle.</summary>
    public required bool RaisedWithin { get; init; }

    /// <summary>The hidden faults.</summary>
    public required IReadOnlyList<PracticeFault> Faults { get; init; }
}
