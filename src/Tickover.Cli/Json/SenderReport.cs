namespace Tickover.Cli.Json;

/// <summary>What <c>sender --json</c> prints; its form is docs/schemas/sender.schema.json.</summary>
internal sealed record SenderReport
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/sender/1";

    public required string Name { get; init; }

    /// <summary>Readings less the best explanation, in their own deviations.</summary>
    public required double Misfit { get; init; }

    public required IReadOnlyList<SenderReportFault> Faults { get; init; }

    public required IReadOnlyList<SenderReportFamily> Senders { get; init; }

    public required IReadOnlyList<SenderReportFamily> Gauges { get; init; }

    public required IReadOnlyList<SenderReportCure> Cures { get; init; }

    public required IReadOnlyList<TankReportAdvice> Advice { get; init; }
}
