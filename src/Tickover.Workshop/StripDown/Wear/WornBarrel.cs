using Tickover.Workshop.Cars;

namespace Tickover.Workshop.StripDown.Wear;

/// <summary>A barrel as it was measured.</summary>
public sealed record WornBarrel
{
    /// <summary>Which barrel, such as "1".</summary>
    public required string Where { get; init; }

    /// <summary>Which carburettor it is in.</summary>
    public required string Carburettor { get; init; }

    /// <summary>Throttle bore along the spindle, mm.</summary>
    public required double Bore { get; init; }

    /// <summary>Throttle bore across the spindle, where the plate's edges wear it, mm; null where it was not measured.</summary>
    public double? BoreAcross { get; init; }

    /// <summary>Closed angle, degrees from square; null where neither it nor the plate's longer axis was measured.</summary>
    public double? ClosedDegrees { get; init; }

    /// <summary>Part of the rim where light is seen, 0 to 1; null where it was not looked at.</summary>
    public double? LightShare { get; init; }

    /// <summary>Gap there, mm.</summary>
    public double LightGap { get; init; }

    /// <summary>Bearings of the spindle that open to the air outside beside this barrel.</summary>
    public IReadOnlyList<BushFit> Bushes { get; init; } = [];

    /// <summary>Pump shot, ml a stroke; null where it was not measured.</summary>
    public double? ShotMillilitres { get; init; }

    /// <summary>What is stamped on the emulsion tube; empty where nothing is.</summary>
    public string TubeStamp { get; init; } = "";

    /// <summary>Rows of holes of the emulsion tube as measured; empty where they were not.</summary>
    public IReadOnlyList<CarHoleRow> TubeRows { get; init; } = [];

    /// <summary>Whether the lever rests on its stop with the rods off; null where it was not looked at.</summary>
    public bool? StopTouches { get; init; }
}
