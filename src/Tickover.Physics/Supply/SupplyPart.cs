namespace Tickover.Physics.Supply;

/// <summary>One part of the way from the tank to a float valve; its outlet is the inlet of those that name it as <see cref="After"/>.</summary>
/// <remarks>A closed family: <see cref="PipeRun"/>, <see cref="LineFitting"/>, <see cref="FuelFilter"/>, <see cref="FuelPump"/>,
/// <see cref="PressureRegulator"/> on the way, <see cref="FloatValve"/>, <see cref="TankReturn"/> and <see cref="OpenEnd"/> at the ends.</remarks>
public abstract record SupplyPart
{
    private protected SupplyPart()
    {
    }

    /// <summary>Name in the line, the only one of its kind.</summary>
    public required string Name { get; init; }

    /// <summary>Name of the part before it; empty for the one that stands in the tank.</summary>
    public string After { get; init; } = "";

    /// <summary>Height of its outlet above the datum all heights of the line are measured from, m.</summary>
    public double OutletHeightMetres { get; init; }

    /// <summary>Where it lies.</summary>
    public SupplyZone Zone { get; init; } = SupplyZone.Chassis;

    /// <summary>Heat it takes in for each kelvin its surroundings are warmer, W/K; not negative.</summary>
    public double HeatTakenWattsPerKelvin { get; init; }

    /// <summary>Whether the line ends here.</summary>
    public virtual bool IsEnd => false;

    /// <summary>Bore its speed is reckoned on, m; zero where it has none.</summary>
    public virtual double SpeedBoreMetres => 0;

    /// <summary>What it takes away for a flow, height left out, Pa; rises with the flow and is antisymmetric.</summary>
    /// <param name="volumeFlow">Flow, m³/s.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="viscosity">Dynamic viscosity, Pa s.</param>
    /// <returns>Pa.</returns>
    internal abstract double Drop(double volumeFlow, double density, double viscosity);

    /// <summary>What is wrong with its own figures.</summary>
    /// <returns>One sentence a fault; empty where it can be reckoned with.</returns>
    internal abstract IEnumerable<string> OwnFaults();
}
