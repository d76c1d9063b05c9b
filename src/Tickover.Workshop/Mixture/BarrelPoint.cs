namespace Tickover.Workshop.Mixture;

/// <summary>What one barrel does at one speed and throttle, as means over the cycle in SI.</summary>
public readonly record struct BarrelPoint
{
    /// <summary>Air through the barrel, kg/s.</summary>
    public double AirKilogramsPerSecond { get; init; }

    /// <summary>Mean depression in the auxiliary venturi, Pa.</summary>
    public double MeanDepressionPascals { get; init; }

    /// <summary>Largest depression in the auxiliary venturi, Pa.</summary>
    public double PeakDepressionPascals { get; init; }

    /// <summary>Mean absolute pressure behind the plate, Pa.</summary>
    public double ManifoldPressurePascals { get; init; }

    /// <summary>Fuel through the main nozzle, kg/s.</summary>
    public double MainFuelKilogramsPerSecond { get; init; }

    /// <summary>Fuel past the mixture screw, kg/s.</summary>
    public double IdleFuelKilogramsPerSecond { get; init; }

    /// <summary>Fuel through the progression holes, kg/s.</summary>
    public double ProgressionFuelKilogramsPerSecond { get; init; }

    /// <summary>Fuel pulled over through the pump jet, kg/s.</summary>
    public double PumpFuelKilogramsPerSecond { get; init; }

    /// <summary>Air through the air corrector, kg/s.</summary>
    public double CorrectorAirKilogramsPerSecond { get; init; }

    /// <summary>Depth of the fuel in the emulsion tube below the level at rest, m.</summary>
    public double WellDropMetres { get; init; }

    /// <summary>Air that flows back out of the barrel as a part of what goes in, 1.</summary>
    public double BackflowFraction { get; init; }

    /// <summary>Mass of air to mass of fuel, 1; positive infinity never appears: see <see cref="PointValidity.NoFuel"/>, where it is zero.</summary>
    public double AirFuelRatio { get; init; }

    /// <summary>Air/fuel ratio over the stoichiometric one of the fuel, 1.</summary>
    public double Lambda { get; init; }

    /// <summary>Volumetric efficiency of the cylinders fed, on ambient density, 1.</summary>
    public double VolumetricEfficiency { get; init; }

    /// <summary>Indicated mean effective pressure less friction, Pa.</summary>
    public double BrakeMeanPressurePascals { get; init; }

    /// <summary>The circuit that feeds most.</summary>
    public FuelCircuit Feeding { get; init; }

    /// <summary>What to be careful about.</summary>
    public PointValidity Validity { get; init; }

    /// <summary>All fuel, kg/s.</summary>
    public double FuelKilogramsPerSecond =>
        MainFuelKilogramsPerSecond + IdleFuelKilogramsPerSecond + ProgressionFuelKilogramsPerSecond + PumpFuelKilogramsPerSecond;
}
