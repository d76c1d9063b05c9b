namespace Tickover.Cli.Json;

/// <summary>What <c>leak --json</c> prints; its form is docs/schemas/leak.schema.json. Leaks in Pa m³/s, pressures in Pa.</summary>
internal sealed record LeakReport
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/leak/1";

    public required string Test { get; init; }

    /// <summary>NoneSeen, Leaks, CannotTell or Gained.</summary>
    public required string Kind { get; init; }

    public required bool IsNo { get; init; }

    public required string Heading { get; init; }

    public required string Why { get; init; }

    public required double Leak { get; init; }

    public required double Low { get; init; }

    public required double High { get; init; }

    /// <summary>By the gauge alone.</summary>
    public required double WithoutTemperature { get; init; }

    public required double SmallestSeen { get; init; }

    public required double MolesPerSecond { get; init; }

    /// <summary>Round hole that leaks as much, mm; null where no leak was seen.</summary>
    public double? HoleMillimetres { get; init; }

    public required double SmallestHoleMillimetres { get; init; }

    /// <summary>How long the test has to be for the limit, s; null without a limit.</summary>
    public double? SecondsForLimit { get; init; }

    public required double UsedPascals { get; init; }

    /// <summary>The most pressure to use.</summary>
    public required double GentlePascals { get; init; }

    public double? BreathingPascals { get; init; }

    public required IReadOnlyList<LeakReportPoint> Curve { get; init; }

    public required IReadOnlyList<string> Working { get; init; }

    public required IReadOnlyList<string> Doubts { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }
}
