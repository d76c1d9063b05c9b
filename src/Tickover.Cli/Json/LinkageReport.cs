namespace Tickover.Cli.Json;

/// <summary>What <c>linkage --json</c> prints; its form is docs/schemas/linkage.schema.json.</summary>
internal sealed record LinkageReport
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/linkage/1";

    public required string Linkage { get; init; }

    public required IReadOnlyList<LinkageReportCarburettor> Carburettors { get; init; }

    /// <summary>Name of the carburettor to match the others to.</summary>
    public required string Reference { get; init; }

    public required string ReferenceWhy { get; init; }

    /// <summary>Where the pedal's shaft rests, degrees.</summary>
    public required double RestDegrees { get; init; }

    public required double EndDegrees { get; init; }

    /// <summary>What ends the travel: Floor, FullStop or DeadPoint.</summary>
    public required string End { get; init; }

    public string? EndsAt { get; init; }

    public required LinkageReportWorst Worst { get; init; }

    public required LinkageReportWorst WorstAfter { get; init; }

    public required IReadOnlyList<LinkageReportMoment> Course { get; init; }

    public required IReadOnlyList<LinkageReportMoment> CourseAfter { get; init; }

    public required IReadOnlyList<LinkageReportMove> Moves { get; init; }

    public required IReadOnlyList<LinkageReportCentre> OverCentres { get; init; }

    public required IReadOnlyList<LinkageReportAdvice> Advice { get; init; }
}
