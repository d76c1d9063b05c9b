namespace Tickover.Cli.Json;

/// <summary>What <c>tickover build --json</c> prints.</summary>
internal sealed record BuildReport
{
    /// <summary>Name and number of the form.</summary>
    public string Schema { get; init; } = "tickover/build/1";

    /// <summary>Name of the sheet.</summary>
    public required string Name { get; init; }

    /// <summary>The verdict in a line.</summary>
    public required string Verdict { get; init; }

    /// <summary>Plates off their seats, degrees.</summary>
    public required double PlateDegrees { get; init; }

    /// <summary>Feeler at the plate's edge, mm.</summary>
    public required double PlateGap { get; init; }

    /// <summary>Mixture screws out, turns; null where no setting gives the mixture wanted.</summary>
    public required double? ScrewTurns { get; init; }

    /// <summary>Everything in the order of the work.</summary>
    public required IReadOnlyList<BuildReportSetting> Settings { get; init; }

    /// <summary>The rods.</summary>
    public required IReadOnlyList<BuildReportRod> Rods { get; init; }
}
