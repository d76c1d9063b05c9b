using Tickover.Physics.Supply;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Supply.Reading;

/// <summary>Reads the pump: by the points of its curve, or by two workshop figures.</summary>
internal sealed class PumpReader(PressureUnit unit)
{
    private static readonly Dictionary<string, PumpKind> Drives = new(StringComparer.Ordinal) { ["mechanical"] = PumpKind.Mechanical, ["electric"] = PumpKind.Electric };

    // Stands in until the line is whole; only its place matters.
    private static readonly PumpCurve StandIn = new([(0, 1), (1e-3, 0)]);

    public WorkshopFigures? Workshop { get; private set; }

    public FuelPump? Pump(ObjectReader reader, string name)
    {
        var pump = new FuelPump
        {
            Name = name,
            Kind = reader.Word("drive", Drives, PumpKind.Mechanical),
            Curve = StandIn,
            MeasuredRpm = reader.Number("rpm", SupplyLimits.Rpm),
            GrowsToRpm = reader.Number("growsTo", SupplyLimits.Rpm),
            MeasuredVolts = reader.Number("volts", SupplyLimits.Volts),
            RequiredSuctionHeadMetres = reader.Number("suctionHead", SupplyLimits.SuctionHead) ?? 0,
        };
        if (reader["curve"] is null == reader["workshop"] is null)
        {
            reader.Faults.Add(
                reader.At("curve"),
                reader["curve"] is null ? "Nothing says what the pump gives" : "The pump is described twice",
                "\"curve\": points of flow and pressure, or \"workshop\": the pressure of the shut line and the flow of the open one",
                "Write \"workshop\": { \"deadHead\": 0.25, \"openFlow\": 1.2 }, read at the last carburettor.");
            return null;
        }

        return reader["curve"] is null ? FromWorkshop(reader, pump) : FromPoints(reader, pump);
    }

    private FuelPump? FromWorkshop(ObjectReader reader, FuelPump pump)
    {
        if (reader.Object("workshop", SupplyForm.Workshop) is not { } figures)
        {
            return null;
        }

        var deadHead = figures.Needed("deadHead", SupplyLimits.Pressure(unit, "The pressure of the shut line", 0.01, 2));
        var flow = figures.Needed("openFlow", SupplyLimits.SomeFlow);
        Workshop = new WorkshopFigures(reader.At("workshop"), SupplyUnits.ToPascals(unit, deadHead), SupplyUnits.ToFlow(flow));
        return double.IsNaN(deadHead + flow) ? null : pump;
    }

    private FuelPump? FromPoints(ObjectReader reader, FuelPump pump)
    {
        var items = reader.List("curve", "[{ \"flow\": 0, \"pressure\": 0.25 }, { \"flow\": 1.2, \"pressure\": 0.1 }]") ?? [];
        var points = new List<(double Flow, double Pressure)>();
        foreach (var (item, i) in items.Take(SupplyForm.MostPoints).Select((item, i) => (item, i)))
        {
            var path = $"{reader.At("curve")}[{i}]";
            if (item.Kind != SourceKind.Object)
            {
                reader.Faults.WrongKind(path, item, "an object in braces", "{ \"flow\": 0, \"pressure\": 0.25 }");
                return null;
            }

            var point = new ObjectReader(item, path, SupplyForm.Point, reader.Faults);
            points.Add((SupplyUnits.ToFlow(point.Needed("flow", SupplyLimits.Flow)), SupplyUnits.ToPascals(unit, point.Needed("pressure", SupplyLimits.Pressure(unit, "The pressure", 0, 3)))));
        }

        if (points.Exists(point => double.IsNaN(point.Flow + point.Pressure)))
        {
            return null;
        }

        var faults = PumpCurve.FaultsOf(points);
        foreach (var fault in faults)
        {
            reader.Faults.Add(reader.At("curve"), fault, "by rising flow from zero, the pressure falling", "Take the readings again: throttle the line step by step, read pressure and time a litre at each step.");
        }

        return faults.Count > 0 ? null : pump with { Curve = new PumpCurve(points) };
    }
}
