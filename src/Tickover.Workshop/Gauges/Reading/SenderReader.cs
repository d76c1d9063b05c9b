using Tickover.Physics.Gauges;
using Tickover.Physics.Sending;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Gauges.Reading;

/// <summary>Reads sender, gauge and pick-up.</summary>
internal static class SenderReader
{
    private const double Milli = 1e-3;
    private const double LitrePerHour = 1e-3 / 3600;
    private const double LeastStep = 1;                    // Ω between the ends
    private const int MostOhms = 21;

    private static readonly Dictionary<string, TankSide> Sides = new(StringComparer.Ordinal) { ["left"] = TankSide.Left, ["right"] = TankSide.Right };
    private static readonly Dictionary<string, GaugeMovement> Movements = new(StringComparer.Ordinal) { ["thermal"] = GaugeMovement.Thermal, ["moving iron"] = GaugeMovement.MovingIron };
    private static readonly Dictionary<string, WireFault> Wires = new(StringComparer.Ordinal) { ["good"] = WireFault.None, ["open"] = WireFault.Open, ["short"] = WireFault.Short };

    public static (TankSender Sender, SenderFamily Family)? Sender(ObjectReader root)
    {
        if (GaugeReader.Member(root, "sender", GaugeForm.Sender, "\"sender\": { \"tank\": \"left\", \"at\": [0, 80], \"pivot\": 120, \"arm\": 180, \"low\": 20, \"high\": 240, \"ohms\": [275, 20] }") is not { } reader)
        {
            return null;
        }

        var (pivot, arm) = (reader.Needed("pivot", GaugeForm.Height), reader.Needed("arm", GaugeForm.Arm));
        var (low, high) = (reader.Needed("low", GaugeForm.Height), reader.Needed("high", GaugeForm.Height));
        var place = Place(reader, 0);
        if (Family(reader, "ohms", needed: true) is not { } family || reader.Faults.All.Count > 0)
        {
            return null;
        }

        if (low >= high || Math.Abs(low - pivot) > arm || Math.Abs(high - pivot) > arm)
        {
            reader.Faults.Add(reader.At("low"), FormattableString.Invariant($"An arm of {arm} mm pivoted at {pivot} mm does not swing from {low} to {high} mm"), "both stops within the arm's reach, the lower below the upper", "Measure pivot, arm and both stops from the tank's floor.");
            return null;
        }

        var swing = FloatArm.Between(pivot * Milli, arm * Milli, low * Milli, high * Milli) with { Reversed = reader.Flag("reversed") };
        return (new TankSender(place, swing), family);
    }

    public static FuelGauge? Gauge(ObjectReader root, SenderFamily? family)
    {
        if (GaugeReader.Member(root, "gauge", GaugeForm.Gauge, "\"gauge\": { \"kind\": \"thermal\", \"lag\": 12 }") is not { } reader)
        {
            return null;
        }

        var movement = reader.Word("kind", Movements, GaugeMovement.Thermal);
        var usualLag = movement is GaugeMovement.Thermal ? FuelGauge.ThermalLagSeconds : FuelGauge.MovingIronLagSeconds;
        var circuit = new GaugeCircuit
        {
            Sender = family ?? new SenderFamily(275, 20),
            MadeFor = Family(reader, "madeFor", needed: false),
            Movement = movement,
            GaugeOhms = reader.Number("ohms", GaugeForm.GaugeOhms) ?? 65,
            Volts = reader.Number("volts", GaugeForm.Volts) ?? GaugeCircuit.StabiliserVolts,
            SeriesOhms = reader.Number("earth", GaugeForm.Ohms) ?? 0,
            Fault = reader.Word("wire", Wires, WireFault.None),
        };
        return new FuelGauge { Circuit = circuit, LagSeconds = reader.Number("lag", GaugeForm.Lag) ?? usualLag, LampTravel = (reader.Number("lamp", GaugeForm.Percent) ?? 10) / 100 };
    }

    public static FuelDraw? Draw(ObjectReader root)
    {
        if (root.Object("pickup", GaugeForm.PickUp) is not { } reader)
        {
            return null;
        }

        var place = Place(reader, reader.Number("height", GaugeForm.Height) ?? 0);
        return new FuelDraw
        {
            PickUp = place,
            BurntCubicMetresPerSecond = (reader.Number("burns", GaugeForm.Flow) ?? 0) * LitrePerHour,
            ReturnCubicMetresPerSecond = (reader.Number("returns", GaugeForm.Flow) ?? 0) * LitrePerHour,
            ReturnSide = reader.Word("returnTo", Sides, place.Side),
        };
    }

    private static TankPlace Place(ObjectReader reader, double height)
    {
        var at = reader.Numbers("at", (2, 2), GaugeForm.Place);
        return new TankPlace(reader.Word("tank", Sides, TankSide.Left), (at?[0] ?? 0) * Milli, (at?[1] ?? 0) * Milli, height * Milli);
    }

    private static SenderFamily? Family(ObjectReader reader, string name, bool needed)
    {
        if (needed && reader[name] is null)
        {
            reader.Faults.Missing(reader.At(name), "The sender's resistance empty and full", "two numbers in Ω", $"\"{name}\": [275, 20]");
        }

        if (reader.Numbers(name, (2, MostOhms), GaugeForm.Ohms) is not { } ohms)
        {
            return null;
        }

        if (Math.Abs(ohms[0] - ohms[^1]) < LeastStep)
        {
            reader.Faults.Add(reader.At(name), "Empty and full have the same resistance", "two that differ", "Measure at both stops of the arm.");
            return null;
        }

        var rises = ohms[^1] > ohms[0];
        if (ohms.Zip(ohms.Skip(1), (a, b) => rises ? b > a : b < a).Contains(false))
        {
            reader.Faults.Add(reader.At(name), "The resistance turns back on the way", "figures that only rise or only fall from empty to full", "Move the arm in equal steps from one stop to the other and read again; a sender that does turn back is worn through.");
            return null;
        }

        return SenderFamily.Wound(ohms);
    }
}
