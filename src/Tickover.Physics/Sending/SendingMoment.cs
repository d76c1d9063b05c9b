namespace Tickover.Physics.Sending;

/// <summary>Tanks and gauge at one moment of a drive.</summary>
public readonly record struct SendingMoment
{
    /// <summary>Time since the beginning, s.</summary>
    public required double Seconds { get; init; }

    /// <summary>What the road does.</summary>
    public required RoadSample Road { get; init; }

    /// <summary>Fuel in the left tank, m³.</summary>
    public required double LeftCubicMetres { get; init; }

    /// <summary>Fuel in the right tank, m³.</summary>
    public required double RightCubicMetres { get; init; }

    /// <summary>Surface over the middle of the left tank's floor, tilted as it is, m; below zero where the middle is dry.</summary>
    public required double LeftLevelMetres { get; init; }

    /// <summary>The same in the right tank, m.</summary>
    public required double RightLevelMetres { get; init; }

    /// <summary>Flow through the pipe towards the right tank, m³/s.</summary>
    public required double FlowToRight { get; init; }

    /// <summary>Wave at the left tank's left wall over the surface at rest, m.</summary>
    public required double LeftWaveMetres { get; init; }

    /// <summary>The same in the right tank, m.</summary>
    public required double RightWaveMetres { get; init; }

    /// <summary>Level where the sender's float swims, m above that tank's floor.</summary>
    public required double SenderLevelMetres { get; init; }

    /// <summary>Travel of the float's arm, 0 to 1.</summary>
    public required double Travel { get; init; }

    /// <summary>Resistance of the sender, with two of them what the gauge has to go by, Ω.</summary>
    public required double Ohms { get; init; }

    /// <summary>The needle: 0 at E, 1 at F.</summary>
    public required double Needle { get; init; }

    /// <summary>Whether the low-fuel lamp is lit.</summary>
    public required bool Lamp { get; init; }

    /// <summary>Whether fuel stands over the pick-up; true where there is none.</summary>
    public required bool PickUpCovered { get; init; }

    /// <summary>Fuel in both tanks, m³.</summary>
    public double TotalCubicMetres => LeftCubicMetres + RightCubicMetres;
}
