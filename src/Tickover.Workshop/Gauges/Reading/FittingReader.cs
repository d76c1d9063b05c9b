using Tickover.Physics.Sending;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Gauges.Reading;

/// <summary>Reads pipe, engine, sender, gauge and lamp.</summary>
internal static class FittingReader
{
    private const double Mm = 1e-3;
    private const double LitresPerHour = 1e-3 / 3600;
    private const double FlapShut = 5000;

    private static readonly Dictionary<string, TankSide> Sides = new(StringComparer.Ordinal) { ["left"] = TankSide.Left, ["right"] = TankSide.Right };
    private static readonly Dictionary<string, NeedleKind> Needles = new(StringComparer.Ordinal) { ["thermal"] = NeedleKind.Thermal, ["moving iron"] = NeedleKind.MovingIron };
    private static readonly Dictionary<string, WiringFault> Faults = new(StringComparer.Ordinal) { ["none"] = WiringFault.None, ["open"] = WiringFault.Open, ["short"] = WiringFault.Short };

    public static CrossPipe? Pipe(ObjectReader root)
    {
        if (Needed(root, "pipe", GaugeForm.Pipe, "The pipe between the tanks", "\"pipe\": { \"bore\": 12, \"length\": 1200 }") is not { } reader)
        {
            return null;
        }

        var (bore, length) = (reader.Needed("bore", GaugeForm.Bore), reader.Needed("length", GaugeForm.PipeLength));
        var loss = reader.Number("loss", GaugeForm.Loss) ?? CrossPipe.UsualLoss;
        var hole = reader.Number("restrictor", GaugeForm.Bore);
        if (hole >= bore)
        {
            reader.Faults.Add(reader.At("restrictor"), "The restrictor's hole is not smaller than the pipe", "less than the bore", "Measure the hole, or take it out.");
        }

        var flap = reader["flap"] is null ? (TankSide?)null : reader.Word("flap", Sides, TankSide.Left);
        if (root.Faults.All.Count > 0)
        {
            return null;
        }

        loss += hole is { } h ? CrossPipe.PlateLoss(h, bore) : 0;
        return new CrossPipe
        {
            BoreMetres = bore * Mm,
            LengthMetres = length * Mm,
            LossToRight = loss + (flap == TankSide.Left ? FlapShut : 0),
            LossToLeft = loss + (flap == TankSide.Right ? FlapShut : 0),
        };
    }

    public static FuelDraw Draw(ObjectReader root)
    {
        if (root.Object("engine", GaugeForm.Engine) is not { } reader)
        {
            return FuelDraw.None;
        }

        return new FuelDraw
        {
            BurntCubicMetresPerSecond = (reader.Number("burns", GaugeForm.Rate) ?? 0) * LitresPerHour,
            ReturnedCubicMetresPerSecond = (reader.Number("returns", GaugeForm.Rate) ?? 0) * LitresPerHour,
            PickUpSide = reader.Word("pickUp", Sides, TankSide.Left),
            ReturnSide = reader.Word("returnTo", Sides, TankSide.Left),
            PickUp = new TankPlace(0, 0, (reader.Number("pickUpHeight", GaugeForm.Height) ?? 10) * Mm),
        };
    }

    public static SenderFitting? Fitting(ObjectReader root)
    {
        var sender = Needed(root, "sender", GaugeForm.Sender, "The sender", "\"sender\": { \"tank\": \"left\", \"pivot\": 120, \"arm\": 140, \"lowest\": 20, \"highest\": 210, \"empty\": 240, \"full\": 33 }");
        var gauge = Needed(root, "gauge", GaugeForm.Gauge, "The gauge", "\"gauge\": { \"needle\": \"thermal\", \"empty\": 240, \"full\": 33, \"lag\": 12 }");
        var arm = sender is null ? null : Arm(sender);
        var circuit = gauge is null ? null : Circuit(gauge);
        var place = sender?.Numbers("at", (2, 2), GaugeForm.Offset) ?? [0, 0];
        var side = sender?.Word("tank", Sides, TankSide.Left) ?? TankSide.Left;
        var lamp = root.Object("lamp", GaugeForm.Lamp) is { } l ? new LowLamp(l.Needed("level", GaugeForm.Height) * Mm, l.Number("delay", GaugeForm.Delay) ?? 0) : null;
        return root.Faults.All.Count > 0 || arm is null || circuit is null ? null : new SenderFitting
        {
            First = new TankSender(side, new TankPlace(place[0] * Mm, place[1] * Mm, 0), arm),
            Gauge = circuit,
            Lamp = lamp,
        };
    }

    private static FloatArm? Arm(ObjectReader reader)
    {
        var (pivot, arm) = (reader.Needed("pivot", GaugeForm.Height), reader.Needed("arm", GaugeForm.Arm));
        var (low, high) = (reader.Needed("lowest", GaugeForm.Height), reader.Needed("highest", GaugeForm.Height));
        var family = Family(reader);
        if (high <= low || low >= pivot + arm || high <= pivot - arm)
        {
            reader.Faults.Add(reader.At("highest"), "Between these levels the arm does not move", "highest above lowest, both within the arm's reach of its pivot", "Measure the levels at which the float meets its stops.");
        }

        return reader.Faults.All.Count > 0 ? null : new FloatArm { PivotMetres = pivot * Mm, LengthMetres = arm * Mm, LowestMetres = low * Mm, HighestMetres = high * Mm, Family = family, Reversed = reader.Flag("reversed") };
    }

    private static GaugeCircuit? Circuit(ObjectReader reader)
    {
        var family = Family(reader);
        var volts = reader.Number("volts", GaugeForm.Volts) ?? 10;
        var circuit = new GaugeCircuit
        {
            Family = family,
            Kind = reader.Word("needle", Needles, NeedleKind.Thermal),
            DialVolts = volts,
            SupplyVolts = reader.Number("supply", GaugeForm.Volts) ?? volts,
            AddedOhms = reader.Number("added", GaugeForm.Ohms) ?? 0,
            Fault = reader.Word("fault", Faults, WiringFault.None),
        };
        var lag = reader.Number("lag", GaugeForm.Lag) ?? (circuit.Kind == NeedleKind.Thermal ? circuit.TimeConstantSeconds : 0.6);
        return reader.Faults.All.Count > 0 ? null : circuit with { TimeConstantSeconds = lag };
    }

    private static SenderFamily Family(ObjectReader reader)
    {
        var family = new SenderFamily(reader.Needed("empty", GaugeForm.Ohms), reader.Needed("full", GaugeForm.Ohms));
        if (Math.Abs(family.FullOhms - family.EmptyOhms) < 1)
        {
            reader.Faults.Add(reader.At("full"), "Empty and full have the same resistance", "two that differ by 1 Ω or more", "Measure both with the arm at its stops.");
        }

        return family;
    }

    private static ObjectReader? Needed(ObjectReader root, string name, IReadOnlyList<string> known, string what, string example)
    {
        if (root[name] is null)
        {
            root.Faults.Missing(name, what, "an object in braces", example);
        }

        return root.Object(name, known);
    }
}
