namespace Tickover.Physics.Metering;

/// <summary>Main jet, emulsion tube in its well, air corrector and nozzle.</summary>
public sealed record MainCircuit
{
    /// <summary>Bore of the main jet, m.</summary>
    public required double JetDiameterMetres { get; init; }

    /// <summary>Length of the main jet's calibrated bore over its diameter, 1. Range 2 to 10.</summary>
    public double JetLengthRatio { get; init; } = 3;

    /// <summary>Bore of the air corrector, m; zero for a plain nozzle without air.</summary>
    public required double AirCorrectorDiameterMetres { get; init; }

    /// <summary>Discharge coefficient of corrector and emulsion holes, 1.</summary>
    public double AirDischargeCoefficient { get; init; } = 0.75;

    /// <summary>Rows of holes, from the top down; empty where the corrector opens straight into the well.</summary>
    public required IReadOnlyList<EmulsionHoleRow> HoleRows { get; init; }

    /// <summary>Free area of the well round the emulsion tube, m²: how fast the emulsion rises in it.</summary>
    public double WellAreaSquareMetres { get; init; } = 50e-6;

    /// <summary>Depth of the well's bottom below the fuel level at rest, m.</summary>
    public required double WellDepthMetres { get; init; }

    /// <summary>Area of the nozzle passage from well to auxiliary venturi, as a bore, m.</summary>
    public required double NozzleDiameterMetres { get; init; }

    /// <summary>Discharge coefficient of the nozzle passage for the mixture, 1.</summary>
    public double NozzleDischargeCoefficient { get; init; } = 0.75;

    /// <summary>Slip of air against fuel in the nozzle passage, 1; one is the homogeneous mixture.</summary>
    public double Slip { get; init; } = 1;

    /// <summary>Length of the fuel column between chamber and nozzle that has to be accelerated, m.</summary>
    public double ColumnLengthMetres { get; init; } = 0.040;

    /// <summary>Bore of that column, m.</summary>
    public double ColumnDiameterMetres { get; init; } = 0.004;
}
