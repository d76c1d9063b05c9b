namespace Tickover.Physics.Metering;

/// <summary>Metering of one barrel at one operating point, means over the cycle.</summary>
public readonly record struct FuelPoint
{
    /// <summary>Fuel from the main nozzle, kg/s.</summary>
    public required double MainKilogramsPerSecond { get; init; }

    /// <summary>Fuel past the mixture screw, kg/s.</summary>
    public required double IdleKilogramsPerSecond { get; init; }

    /// <summary>Fuel from the progression holes, kg/s.</summary>
    public required double ProgressionKilogramsPerSecond { get; init; }

    /// <summary>Fuel pulled over at the pump jet, kg/s.</summary>
    public required double PumpKilogramsPerSecond { get; init; }

    /// <summary>Air through the air corrector, kg/s.</summary>
    public required double CorrectorAirKilogramsPerSecond { get; init; }

    /// <summary>Air through idle bleed and holes, kg/s.</summary>
    public required double IdleAirKilogramsPerSecond { get; init; }

    /// <summary>Level in the emulsion tube below the level at rest, m.</summary>
    public required double LevelDropMetres { get; init; }

    /// <summary>Whether every row of emulsion holes is uncovered.</summary>
    public required bool AllRowsUncovered { get; init; }

    /// <summary>Mean depression in the auxiliary venturi, Pa.</summary>
    public required double MeanDepressionPascals { get; init; }

    /// <summary>Largest depression in the auxiliary venturi, Pa.</summary>
    public required double PeakDepressionPascals { get; init; }

    /// <summary>Mean absolute pressure behind the plate, Pa.</summary>
    public required double ManifoldPressurePascals { get; init; }

    /// <summary>What the idle circuit's fuel alone takes from the head at the main jet it comes through, Pa; zero where it does not.</summary>
    public required double IdleDropPascals { get; init; }

    /// <summary>Largest Reynolds number (ideal velocity) at the main jet over the cycle, 1.</summary>
    public required double MainJetReynolds { get; init; }

    /// <summary>Largest flow of air over the cycle, kg/s.</summary>
    public required double PeakAirKilogramsPerSecond { get; init; }

    /// <summary>Whether level and fuel flow came to balance.</summary>
    public required bool Settled { get; init; }

    /// <summary>All fuel, kg/s.</summary>
    public double FuelKilogramsPerSecond =>
        MainKilogramsPerSecond + IdleKilogramsPerSecond + ProgressionKilogramsPerSecond + PumpKilogramsPerSecond;

    /// <summary>Air through the fuel circuits, kg/s; it reaches the engine besides the barrel's own.</summary>
    public double BledAirKilogramsPerSecond => CorrectorAirKilogramsPerSecond + IdleAirKilogramsPerSecond;
}
