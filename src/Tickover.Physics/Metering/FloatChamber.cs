namespace Tickover.Physics.Metering;

/// <summary>The float chamber: where the fuel stands and what presses on it.</summary>
public sealed record FloatChamber
{
    /// <summary>Height of the main nozzle's lip above the fuel level, m. Textbook 0.0028 to 0.010.</summary>
    public required double LipHeightMetres { get; init; }

    /// <summary>Pressure in the chamber above that at the trumpet's mouth, Pa; zero where the vent is inside the filter.</summary>
    public double VentPressureRisePascals { get; init; }
}
