using Tickover.Physics.Supply;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Supply.Reading;

/// <summary>Reads the parts of a line.</summary>
internal sealed class PartReader(ObjectReader root, PressureUnit unit, double surfaceMetres)
{
    private static readonly Dictionary<string, SupplyZone> Zones = new(StringComparer.Ordinal)
    {
        ["tank"] = SupplyZone.Tank,
        ["floor"] = SupplyZone.Chassis,
        ["bonnet"] = SupplyZone.Bonnet,
    };

    private readonly Dictionary<string, double> _heights = new(StringComparer.Ordinal);
    private readonly PumpReader _pumps = new(unit);

    public Dictionary<string, double> Shares { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, string> Notes { get; } = new(StringComparer.Ordinal);

    /// <summary>Place of each part in the document, by name, for the faults of the line as a whole.</summary>
    public Dictionary<string, string> Paths { get; } = new(StringComparer.Ordinal);

    public WorkshopFigures? Workshop => _pumps.Workshop;

    public List<SupplyPart> Read()
    {
        if (root["parts"] is null)
        {
            root.Faults.Missing("parts", "The line from the tank to the float valves", "a list of parts, each naming the one it comes after", "\"parts\": [{ \"name\": \"pick-up\", \"kind\": \"pick-up\", \"bore\": 6 }]");
        }

        var items = root.List("parts", "[{ … }]") ?? [];
        if (items.Count > SupplyForm.MostParts)
        {
            root.Faults.Add("parts", $"{items.Count} parts", $"at most {SupplyForm.MostParts}", "Put pipes of one bore together.");
        }

        return [.. items.Take(SupplyForm.MostParts).Select((item, i) => Part(item, $"parts[{i}]")).OfType<SupplyPart>()];
    }

    private SupplyPart? Part(SourceNode item, string path)
    {
        if (item.Kind != SourceKind.Object)
        {
            root.Faults.WrongKind(path, item, "an object in braces", "{ \"name\": \"hose\", \"kind\": \"pipe\", … }");
            return null;
        }

        var kind = item["kind"] is { Kind: SourceKind.Text } written ? written.Text.Trim() : "";
        if (!SupplyForm.Kinds.TryGetValue(kind, out var members))
        {
            var near = Spelling.Nearest(kind, SupplyForm.Kinds.Keys);
            root.Faults.Add($"{path}.kind", kind.Length == 0 ? "The kind of the part is missing" : $"There is no part of the kind \"{kind}\"", string.Join(", ", SupplyForm.Kinds.Keys.Select(k => $"\"{k}\"")), near is null ? "Say what it is." : $"Did you mean \"{near}\"?");
            return null;
        }

        var reader = new ObjectReader(item, path, members, root.Faults);
        var name = LinkReader.Named(reader);
        var after = reader.Text("after", "pump") ?? "";
        var height = reader.Number("height", SupplyLimits.Height) is { } mm ? SupplyUnits.FromMillimetres(mm) : _heights.GetValueOrDefault(after, surfaceMetres);
        var zone = reader.Word("where", Zones, SupplyZone.Chassis);
        if (name is null)
        {
            return null;
        }

        _heights.TryAdd(name, height);
        Paths.TryAdd(name, path);
        if (item["note"] is { Kind: SourceKind.Text } note)
        {
            Notes.TryAdd(name, note.Text.Trim());
        }

        return Made(reader, kind, name) is { } part ? part with { After = after, OutletHeightMetres = height, Zone = zone } : null;
    }

    private SupplyPart? Made(ObjectReader reader, string kind, string name) => kind switch
    {
        "pick-up" => Fitting(reader, name, SupplyLosses.StandingEntry),
        "tap" => Fitting(reader, name, SupplyLosses.OpenTap),
        "union" => Fitting(reader, name, SupplyLosses.Banjo),
        "tee" => Fitting(reader, name, SupplyLosses.TeeRun),
        "pipe" => Pipe(reader, name),
        "filter" => Filter(reader, name),
        "pump" => _pumps.Pump(reader, name),
        "regulator" => Regulator(reader, name),
        "return" => new TankReturn { Name = name, RestrictorMetres = SupplyUnits.FromMillimetres(reader.Needed("restrictor", SupplyLimits.Restrictor)) },
        _ => Valve(reader, name),
    };

    private static LineFitting Fitting(ObjectReader reader, string name, double usual) => new()
    {
        Name = name,
        BoreMetres = SupplyUnits.FromMillimetres(reader.Needed("bore", SupplyLimits.Bore)),
        LossCoefficient = reader.Number("loss", SupplyLimits.Loss) ?? usual,
    };

    private static PipeRun Pipe(ObjectReader reader, string name)
    {
        var (bore, length) = (SupplyUnits.FromMillimetres(reader.Needed("bore", SupplyLimits.Bore)), reader.Needed("length", SupplyLimits.Length));
        const double wall = 0.0015; // of pipe and hose alike, where no outside is given: it only warms the fuel
        var outside = reader.Number("outside", SupplyLimits.Outside) is { } mm ? SupplyUnits.FromMillimetres(mm) : bore + 2 * wall;
        return new PipeRun
        {
            Name = name,
            BoreMetres = bore,
            LengthMetres = length,
            LossCoefficient = (reader.Number("bends", SupplyLimits.Bends) ?? 0) * SupplyLosses.RightAngleBend + (reader.Number("loss", SupplyLimits.Loss) ?? 0),
            RoughnessMetres = reader.Number("roughness", SupplyLimits.Roughness) is { } micro ? SupplyUnits.FromMicrometres(micro) : SupplyLosses.DrawnTubeRoughnessMetres,
            HeatTakenWattsPerKelvin = reader.Flag("insulated") ? 0 : SupplyLosses.HeatTaken(outside, length),
        };
    }

    private FuelFilter? Filter(ObjectReader reader, string name)
    {
        const double usualElement = 60; // per cent of a clean filter's drop that is its element's: assumed
        if (reader["drop"] is null)
        {
            reader.Faults.Missing(reader.At("drop"), "What the clean filter takes", "a pressure at a flow, read on it or from its maker", "\"drop\": { \"pressure\": 0.015, \"flow\": 1 }");
        }

        var loading = reader.Number("loading", SupplyLimits.Loading) ?? 1;
        var fineness = reader.Number("fineness", SupplyLimits.Fineness);
        if (reader.Object("drop", SupplyForm.Drop) is not { } drop)
        {
            return null;
        }

        var pressure = drop.Needed("pressure", SupplyLimits.Pressure(unit, "The drop", 0, 1));
        var flow = drop.Needed("flow", SupplyLimits.SomeFlow);
        var element = drop.Number("element", SupplyLimits.Share) ?? usualElement;
        return double.IsNaN(pressure + flow) ? null : FuelFilter.FromDrop(name, SupplyUnits.ToPascals(unit, pressure), SupplyUnits.ToFlow(flow), element / 100) with
        {
            Loading = loading,
            FinenessMetres = fineness is { } size ? SupplyUnits.FromMicrometres(size) : null,
        };
    }

    private PressureRegulator Regulator(ObjectReader reader, string name)
    {
        var made = new PressureRegulator { Name = name, SetGaugePascals = SupplyUnits.ToPascals(unit, reader.Needed("set", SupplyLimits.Pressure(unit, "The setting", 0.02, 2))) };
        return reader.Number("droop", SupplyLimits.Pressure(unit, "The droop for each litre a minute", 0, 1)) is { } droop
            ? made with { DroopPascalSeconds = SupplyUnits.ToPascals(unit, droop) / SupplyUnits.ToFlow(1) }
            : made;
    }

    private FloatValve Valve(ObjectReader reader, string name)
    {
        var valve = new FloatValve { Name = name, SeatMetres = SupplyUnits.FromMillimetres(reader.Needed("seat", SupplyLimits.Seat)) };
        double Millimetres(string member, NumberLimit limit, double usual) => reader.Number(member, limit) is { } mm ? SupplyUnits.FromMillimetres(mm) : usual;
        double SquareCentimetres(string member, double usual) => reader.Number(member, SupplyLimits.Area) is { } area ? SupplyUnits.FromSquareCentimetres(area) : usual;
        if (reader.Number("share", SupplyLimits.Share) is { } share)
        {
            Shares[name] = share / 100;
        }

        return valve with
        {
            DischargeCoefficient = reader.Number("discharge", SupplyLimits.Discharge) ?? valve.DischargeCoefficient,
            LeverRatio = reader.Number("leverRatio", SupplyLimits.Ratio) ?? valve.LeverRatio,
            FloatAreaSquareMetres = SquareCentimetres("floatArea", valve.FloatAreaSquareMetres),
            ChamberAreaSquareMetres = SquareCentimetres("chamberArea", valve.ChamberAreaSquareMetres),
            SetAtGaugePascals = reader.Number("setAt", SupplyLimits.Pressure(unit, "The pressure the level was set at", 0, 1)) is { } set ? SupplyUnits.ToPascals(unit, set) : 0,
            SpillMetres = Millimetres("spill", SupplyLimits.Rise, valve.SpillMetres),
            JetDepthMetres = Millimetres("jetDepth", SupplyLimits.Depth, valve.JetDepthMetres),
            JetAheadMetres = Millimetres("jetsAhead", SupplyLimits.Offset, 0),
            JetLeftMetres = Millimetres("jetsLeft", SupplyLimits.Offset, 0),
        };
    }
}
