namespace Tickover.Physics.Metering;

/// <summary>Idle jet, its air bleed, the mixture screw and the progression holes.</summary>
public sealed record IdleCircuit
{
    /// <summary>Bore of the idle jet, m.</summary>
    public required double JetDiameterMetres { get; init; }

    /// <summary>Length of the idle jet's calibrated bore over its diameter, 1.</summary>
    public double JetLengthRatio { get; init; } = 3;

    /// <summary>Bore of the idle air bleed, m.</summary>
    public required double BleedDiameterMetres { get; init; }

    /// <summary>Discharge coefficient of the bleed and of the holes for air, 1.</summary>
    public double AirDischargeCoefficient { get; init; } = 0.75;

    /// <summary>Height of the idle passage's top above the fuel level, m.</summary>
    public double LiftMetres { get; init; } = 0.015;

    /// <summary>
    /// Part of the main jet's mean pressure drop that the idle jet feels, 1: one where it draws from the main well behind the
    /// main jet, so that it fades as the main circuit takes over; zero where it draws from the chamber.
    /// </summary>
    public double MainWellShare { get; init; } = 1;

    /// <summary>Seat bore under the mixture screw, m.</summary>
    public required double ScrewSeatDiameterMetres { get; init; }

    /// <summary>Half angle of the screw's cone, radians.</summary>
    public double ScrewHalfAngleRadians { get; init; } = 0.105;

    /// <summary>Lift of the screw a turn, m.</summary>
    public double ScrewPitchMetres { get; init; } = 0.0005;

    /// <summary>Turns out from lightly seated, 1.</summary>
    public required double ScrewTurns { get; init; }

    /// <summary>Discharge coefficient of screw port and progression holes for the mixture, 1.</summary>
    public double OutletDischargeCoefficient { get; init; } = 0.70;

    /// <summary>The progression holes; may be empty.</summary>
    public required IReadOnlyList<ProgressionHole> ProgressionHoles { get; init; }
}
