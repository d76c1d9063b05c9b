using Tickover.Physics.Air;
using Tickover.Physics.Fuels;
using Tickover.Physics.Supply;

namespace Tickover.Physics.Tests.Supply;

/// <summary>Invented lines to try the models on.</summary>
internal static class Lines
{
    public const double KilogramsPerLitreHour = 0.745 / 3600;

    public static SupplyFuel Petrol { get; } = new() { Blend = FuelGrade.Ethanol(5).Blend, VapourPressureAt38Pascals = 60_000 };

    /// <summary>A pump ahead of three float valves in a row, fed from a tank behind and below.</summary>
    public static SupplyLine Three(double returnMetres = 0) => new()
    {
        TankSurfaceHeightMetres = 0.45,
        Parts =
        [
            new LineFitting { Name = "pick-up", BoreMetres = 0.006, LossCoefficient = SupplyLosses.StandingEntry, OutletHeightMetres = 0.5, Zone = SupplyZone.Tank },
            new PipeRun { Name = "long pipe", After = "pick-up", BoreMetres = 0.006, LengthMetres = 3.2, LossCoefficient = 3, OutletHeightMetres = 0.55, HeatTakenWattsPerKelvin = SupplyLosses.HeatTaken(0.008, 3.2) },
            Pump(),
            FuelFilter.FromDrop("filter", 1500, 60 / 3.6e6, 0.6) with { After = "pump", OutletHeightMetres = 0.7, Zone = SupplyZone.Bonnet },
            new PipeRun { Name = "hose", After = "filter", BoreMetres = 0.006, LengthMetres = 0.6, OutletHeightMetres = 0.85, Zone = SupplyZone.Bonnet, HeatTakenWattsPerKelvin = SupplyLosses.HeatTaken(0.012, 0.6) },
            Valve("front", "hose"),
            new PipeRun { Name = "link 1", After = "hose", BoreMetres = 0.006, LengthMetres = 0.2, OutletHeightMetres = 0.85, Zone = SupplyZone.Bonnet },
            Valve("middle", "link 1"),
            new PipeRun { Name = "link 2", After = "link 1", BoreMetres = 0.006, LengthMetres = 0.2, OutletHeightMetres = 0.85, Zone = SupplyZone.Bonnet },
            Valve("rear", "link 2"),
            .. returnMetres > 0 ? [new TankReturn { Name = "return", After = "link 2", RestrictorMetres = returnMetres, OutletHeightMetres = 0.6 }] : Array.Empty<SupplyPart>(),
        ],
    };

    public static FuelPump Pump() => new()
    {
        Name = "pump",
        After = "long pipe",
        Kind = PumpKind.Electric,
        Curve = new PumpCurve([(0, 24_000), (60 / 3.6e6, 17_000), (110 / 3.6e6, 0)]),
        MeasuredVolts = 13,
        OutletHeightMetres = 0.6,
        Zone = SupplyZone.Bonnet,
    };

    public static FloatValve Valve(string name, string after, double seatMetres = 0.00175) =>
        new() { Name = name, After = after, SeatMetres = seatMetres, OutletHeightMetres = 0.87, Zone = SupplyZone.Bonnet };

    public static SupplyDuty Duty(SupplyLine line, double litresHourEach, double celsius = 20) => new()
    {
        Name = "trial",
        Fuel = Petrol,
        DemandKilogramsPerSecond = line.Valves.ToDictionary(valve => valve.Name, _ => litresHourEach * KilogramsPerLitreHour, StringComparer.Ordinal),
        TankKelvin = AirConstants.IcePointKelvin + celsius,
        ChassisKelvin = AirConstants.IcePointKelvin + celsius,
        BonnetKelvin = AirConstants.IcePointKelvin + celsius,
        PumpVolts = 13,
    };
}
