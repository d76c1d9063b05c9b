namespace Tickover.Physics.Supply;

/// <summary>What is asked of a line at one moment: idle, full load, hot.</summary>
public sealed record SupplyDuty
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>The fuel.</summary>
    public required SupplyFuel Fuel { get; init; }

    /// <summary>Fuel each float valve must pass, kg/s, by the valve's name; a valve left out takes none.</summary>
    public required IReadOnlyDictionary<string, double> DemandKilogramsPerSecond { get; init; }

    /// <summary>Pressure of the air, Pa absolute; above zero.</summary>
    public double AirPascals { get; init; } = Air.AirConstants.StandardPressurePascals;

    /// <summary>Temperature of the fuel in the tank, K.</summary>
    public required double TankKelvin { get; init; }

    /// <summary>Temperature of the air under the floor, K.</summary>
    public required double ChassisKelvin { get; init; }

    /// <summary>Temperature of the air under the bonnet, K.</summary>
    public required double BonnetKelvin { get; init; }

    /// <summary>Engine speed, rev/min; null where it does not matter.</summary>
    public double? EngineRpm { get; init; }

    /// <summary>Voltage at the pump, V; null where it does not matter.</summary>
    public double? PumpVolts { get; init; }

    /// <summary>Temperature of the air around a zone, K.</summary>
    /// <param name="zone">The zone.</param>
    /// <returns>K.</returns>
    public double Around(SupplyZone zone) => zone switch
    {
        SupplyZone.Tank => TankKelvin,
        SupplyZone.Bonnet => BonnetKelvin,
        _ => ChassisKelvin,
    };

    /// <summary>What keeps the duty from being put on a line.</summary>
    /// <param name="line">The line.</param>
    /// <returns>One sentence a fault; empty where it can be solved.</returns>
    public IReadOnlyList<string> Faults(SupplyLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        var faults = new List<string>();
        foreach (var (name, temperature) in new[] { ("tank", TankKelvin), ("floor", ChassisKelvin), ("bonnet", BonnetKelvin) })
        {
            faults.AddRange(SupplyText.OutOf(Name, $"temperature at the {name} in kelvin", temperature, 233, 420));
        }

        faults.AddRange(SupplyText.OutOf(Name, "pressure of the air in pascals", AirPascals, 30_000, 120_000));
        faults.AddRange(SupplyText.OutOf(Name, "vapour pressure at 37.8 °C in pascals", Fuel.VapourPressureAt38Pascals, 1_000, 150_000));
        faults.AddRange(EngineRpm is { } rpm ? SupplyText.NotAboveZero(Name, "engine speed", rpm) : []);
        faults.AddRange(PumpVolts is { } volts ? SupplyText.NotAboveZero(Name, "voltage", volts) : []);
        foreach (var (valve, demand) in DemandKilogramsPerSecond)
        {
            faults.AddRange(SupplyText.Negative(Name, $"demand of {valve}", demand));
            if (!line.Valves.Any(known => known.Name.Equals(valve, StringComparison.Ordinal)))
            {
                faults.Add($"{Name}: {valve} is no float valve of the line.");
            }
        }

        return faults;
    }
}
