using System.Globalization;
using Tickover.Physics.Supply;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Supply.Reading;

/// <summary>Reads what the engine takes: litres an hour, or power and consumption.</summary>
internal static class EngineReader
{
    private const double UsualConsumption = 0.33; // kg/kWh: carburettors at full load 0.30 to 0.36, from memory
    private const double UsualIdle = 1.5; // l/h: common practice for two to three litres
    private const double JoulesPerKilowattHour = 3.6e6;

    public static SupplyEngine? Read(ObjectReader root, double densityAtTank)
    {
        if (root["engine"] is null)
        {
            root.Faults.Missing("engine", "What the engine takes", "its power, or its fuel at full load", "\"engine\": { \"power\": 95 }");
        }

        if (root.Object("engine", SupplyForm.Engine) is not { } reader)
        {
            return null;
        }

        var (power, stated) = (reader.Number("power", SupplyLimits.Power), reader.Number("fullLoad", SupplyLimits.LitresHour));
        var consumption = reader.Number("consumption", SupplyLimits.Consumption);
        var idle = reader.Number("idle", SupplyLimits.LitresHour) ?? UsualIdle;
        var jet = reader.Number("smallestJet", SupplyLimits.Jet);
        if (power is null == stated is null)
        {
            reader.Faults.Add(reader.At("power"), power is null ? "Neither power nor fuel at full load is given" : "Both power and fuel at full load are given", "one of the two", "Keep the one that was measured.");
            return null;
        }

        var (full, origin) = stated is { } litres
            ? (densityAtTank * SupplyUnits.FromLitresHour(litres), string.Create(CultureInfo.InvariantCulture, $"{litres:0.#} l/h, as the document says"))
            : FromPower(power!.Value, consumption, densityAtTank);
        return new SupplyEngine
        {
            FullLoadKilogramsPerSecond = full,
            IdleKilogramsPerSecond = densityAtTank * SupplyUnits.FromLitresHour(idle),
            Origin = origin,
            SmallestJetMetres = jet is { } mm ? SupplyUnits.FromMillimetres(mm) : null,
        };
    }

    private static (double Demand, string Origin) FromPower(double kilowatts, double? consumption, double density)
    {
        var each = consumption ?? UsualConsumption;
        var demand = FuelDemand.FromPower(SupplyUnits.FromKilowatts(kilowatts), each / JoulesPerKilowattHour);
        var litres = SupplyUnits.ToLitresHour(demand / density);
        return (demand, string.Create(CultureInfo.InvariantCulture, $"{kilowatts:0.#} kW × {each:0.00} kg/kWh{(consumption is null ? " (common practice)" : "")} ÷ {density:0} kg/m³ = {litres:0.0} l/h"));
    }
}
