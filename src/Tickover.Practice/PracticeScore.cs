namespace Tickover.Practice;

/// <summary>How it went: counted acts, and what is really true of the engine at the end.</summary>
public sealed record PracticeScore
{
    /// <summary>Adjusters turned; one turned once is a move however far.</summary>
    public required int Moves { get; init; }

    /// <summary>Rods taken off, put back or offered, stops looked at.</summary>
    public required int Handling { get; init; }

    /// <summary>Rounds read.</summary>
    public required int Rounds { get; init; }

    /// <summary>Readings of one barrel.</summary>
    public required int SingleReadings { get; init; }

    /// <summary>Minutes of work.</summary>
    public required double Minutes { get; init; }

    /// <summary>Idle speed, rpm; 0 where it stalls.</summary>
    public required double IdleRpm { get; init; }

    /// <summary>True air at idle, most less least barrel, kg/h.</summary>
    public required double IdleSpread { get; init; }

    /// <summary>True air at idle, furthest barrel from the mean, part of the mean.</summary>
    public required double IdleWorst { get; init; }

    /// <summary>True air off idle, furthest barrel from the mean at any of the speeds, part of the mean.</summary>
    public required double RaisedWorst { get; init; }

    /// <summary>Whether all is within limits at idle.</summary>
    public required bool IdleWithin { get; init; }

    /// <summary>Whether all is within limits off idle.</summary>
    public required bool RaisedWithin { get; init; }

    /// <summary>Faults hidden in the engine.</summary>
    public required int FaultsHidden { get; init; }

    /// <summary>Of these, named right.</summary>
    public required int FaultsFound { get; init; }

    /// <summary>Faults named that were not there.</summary>
    public required int NamedWrong { get; init; }
}
