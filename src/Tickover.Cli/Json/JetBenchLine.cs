namespace Tickover.Cli.Json;

/// <summary>One jet of a <see cref="JetBenchDocument"/>; bores in mm, flow in ml a minute; null where not measured.</summary>
internal sealed record JetBenchLine
{
    /// <summary>What it is.</summary>
    public required string Part { get; init; }

    /// <summary>Where it sat.</summary>
    public required string Where { get; init; }

    /// <summary>What is stamped on it.</summary>
    public required string Stamp { get; init; }

    /// <summary>Bore by its stamp.</summary>
    public double? StampBore { get; init; }

    /// <summary>Largest pin gauge that goes in.</summary>
    public double? PinBore { get; init; }

    /// <summary>Bore by its flow.</summary>
    public double? FlowBore { get; init; }

    /// <summary>90 % band of it, ±.</summary>
    public double? FlowBand { get; init; }

    /// <summary>Flow on this bench.</summary>
    public double? Flow { get; init; }

    /// <summary>Off the middle flow of its set, as a part.</summary>
    public double? OffSet { get; init; }

    /// <summary>90 % band of it, ±.</summary>
    public double? OffSetBand { get; init; }

    /// <summary>Agrees, Wide, Blocked, Narrow, OtherNumbering, Rounded or Unknown.</summary>
    public required string Finding { get; init; }

    /// <summary>The same in words.</summary>
    public required string Words { get; init; }
}
