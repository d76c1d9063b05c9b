namespace Tickover.Workshop.Logs;

/// <summary>The engine before one λ probe, as far as a shot of fuel must be weighed.</summary>
public sealed record TipInEngine
{
    /// <summary>Swept volume whose exhaust the probe sees, litres; above zero.</summary>
    public required double SweptLitres { get; init; }

    /// <summary>Barrels that feed it, each with its pump nozzle; 1 or more.</summary>
    public required int Barrels { get; init; }

    /// <summary>Stoichiometric mass of dry air to mass of fuel, 1; E5 has 14.28.</summary>
    public double StoichiometricRatio { get; init; } = 14.28;

    /// <summary>Density of the fuel, kg/m³.</summary>
    public double FuelDensity { get; init; } = 745;

    /// <summary>Density of the air, kg/m³.</summary>
    public double AirDensity { get; init; } = 1.2;

    /// <summary>Filling once the throttle is open, on that density, 1. Common practice; a map of the car knows better.</summary>
    public double Filling { get; init; } = 0.75;

    /// <summary>Half the band of <see cref="Filling"/>, 1.</summary>
    public double FillingBand { get; init; } = 0.15;

    /// <summary>Filling before the opening, 1; light throttle, common practice.</summary>
    public double FillingBefore { get; init; } = 0.25;

    /// <summary>Number of the pump jet fitted, 1/100 mm; null where it is not known.</summary>
    public double? PumpJet { get; init; }

    /// <summary>What one stroke of the pump gives a barrel, cm³, measured into a tube; null where it was not.</summary>
    public double? ShotPerBarrel { get; init; }

    internal bool IsPossible =>
        Barrels > 0 && new[] { SweptLitres, StoichiometricRatio, FuelDensity, AirDensity, Filling, FillingBefore, PumpJet ?? 1, ShotPerBarrel ?? 1 }
            .All(figure => double.IsFinite(figure) && figure > 0);

    /// <summary>Air at a speed and a filling, kg/s.</summary>
    internal double Air(double rpm, double filling)
    {
        const double litres = 1e-3;
        const double secondsAndTurns = 120; // a four-stroke breathes once in two turns
        return filling * AirDensity * SweptLitres * litres * rpm / secondsAndTurns; // metering (27)
    }
}
