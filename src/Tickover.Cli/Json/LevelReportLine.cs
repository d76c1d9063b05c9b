namespace Tickover.Cli.Json;

/// <summary>One carburettor's level.</summary>
internal sealed record LevelReportLine
{
    /// <summary>Which carburettor.</summary>
    public required string Where { get; init; }

    /// <summary>How it stands to the set.</summary>
    public required string Finding { get; init; }

    /// <summary>Whether something must be done.</summary>
    public required bool IsNo { get; init; }

    /// <summary>Depth of the float in the fuel, mm.</summary>
    public required double? Sunk { get; init; }

    /// <summary>Fuel below the lid, mm, and ± at 90 %.</summary>
    public required double? Level { get; init; }

    /// <summary>± mm at 90 %.</summary>
    public required double? LevelBand { get; init; }

    /// <summary>What of the band is not shared with the set, ± mm.</summary>
    public required double OwnBand { get; init; }

    /// <summary>Higher than wanted, mm.</summary>
    public required double? Off { get; init; }

    /// <summary>Nozzle's lip over the fuel, mm.</summary>
    public required double? Lip { get; init; }

    /// <summary>Bend of the tang at the needle, mm; positive for the float to shut it lower.</summary>
    public required double Tang { get; init; }

    /// <summary>Rise with nothing taken out, mm; null where it spills.</summary>
    public required double? RiseAtDeadHead { get; init; }

    /// <summary>Pressure from which it spills, kPa.</summary>
    public required double Flooding { get; init; }

    /// <summary>Heavier than the middle of the set, g.</summary>
    public required double MassOff { get; init; }

    /// <summary>What to do.</summary>
    public required IReadOnlyList<string> Words { get; init; }
}
