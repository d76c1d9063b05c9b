using Tickover.Physics.Fuels;
using Tickover.Physics.Supply;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Supply.Reading;

/// <summary>Reads a document into a supply, or into everything that is wrong with it.</summary>
internal static class SupplyReader
{
    private const string Kind = "supply";
    private const double UsualVapourPressure = 60; // kPa: the most EN 228 allows in summer

    private static readonly Dictionary<string, PressureUnit> Units = new(StringComparer.Ordinal) { ["bar"] = PressureUnit.Bar, ["psi"] = PressureUnit.Psi };

    public static SupplyRead Read(string json)
    {
        var root = SourceParser.Parse(json, out var syntax, Kind);
        if (root is null)
        {
            return new SupplyRead(null, [syntax!]);
        }

        var faults = new Faults(Kind);
        var example = $"\"format\": \"{SupplyForm.Format}\"";
        if (root.Kind != SourceKind.Object)
        {
            faults.WrongKind("document", root, "an object in braces", "{ " + example + ", … }");
            return new SupplyRead(null, faults.All);
        }

        if (root["format"] is not { Kind: SourceKind.Text, Text: SupplyForm.Format })
        {
            // A document of another kind would only be called wrong in every line.
            faults.Add("format", root["format"] is { } other ? $"Found {other.Described}" : "The marker of a supply document is missing", $"\"{SupplyForm.Format}\", the one format this version reads", $"Write {example}.");
            return new SupplyRead(null, faults.All);
        }

        var supply = Supply(json, new ObjectReader(root, string.Empty, SupplyForm.Root, faults));
        return new SupplyRead(faults.All.Count > 0 ? null : supply, faults.All);
    }

    private static FuelSupply? Supply(string json, ObjectReader root)
    {
        var name = LinkReader.Named(root);
        var unit = root.Word("pressure", Units, PressureUnit.Bar);
        var (fuelName, fuel) = Fuel(root);
        var (surface, vacuum) = Tank(root, unit);
        var parts = new PartReader(root, unit, surface);
        var line = new SupplyLine { Parts = parts.Read(), TankSurfaceHeightMetres = surface, TankGaugePascals = -vacuum };
        var (attitude, readings) = (Attitude(root), Readings(root, unit));
        var reader = new EngineReader(root, json, fuelName);
        var cases = CaseReader.Read(root, reader.IdleRpm, reader.FullRpm);
        var engine = fuel is null ? null : reader.Read(fuel.Blend.At(cases[0].TankKelvin).DensityKilogramsPerCubicMetre);
        if (root.Faults.All.Count > 0 || fuel is null || engine is null)
        {
            return null;
        }

        foreach (var fault in line.Faults())
        {
            root.Faults.Add("parts", fault.TrimEnd('.'), "one tree from the tank to the float valves", "Look at \"after\" of the parts named.");
        }

        return root.Faults.All.Count > 0 ? null : Finished(root, parts, new FuelSupply
        {
            Name = name!,
            Document = json,
            Unit = unit,
            Line = line,
            FuelName = fuelName,
            Fuel = fuel,
            Engine = engine,
            Cases = cases,
            Attitude = attitude,
            FineFilter = line.WayTo(line.Valves.First().Name).LastOrDefault(part => part is FuelFilter)?.Name,
            Readings = readings,
            Notes = parts.Notes,
        });
    }

    // A pump known from the end of its line gets its curve when the line is whole; shares must add up.
    private static FuelSupply Finished(ObjectReader root, PartReader parts, FuelSupply supply)
    {
        const double rounding = 0.005; // of percentages without decimals
        if (parts.Shares.Count > 0 && (parts.Shares.Count != supply.Line.Valves.Count() || Math.Abs(parts.Shares.Values.Sum() - 1) > rounding))
        {
            root.Faults.Add("parts", "The shares of the float valves do not make a whole", "a share for every float valve, 100 % together", "Leave all shares out where all chambers feed alike.");
        }

        var shared = supply with { Shares = parts.Shares };
        if (parts.Workshop is not { } figures)
        {
            return shared;
        }

        if (supply.Line.Parts.Any(part => part is PressureRegulator))
        {
            root.Faults.Add(figures.Path, "Behind a regulator the pump cannot be read", "\"curve\", or figures taken with the regulator out", "Read the pump before the regulator.");
            return shared;
        }

        var duty = SupplyAnalyst.Duty(shared, supply.Cases[0]) with { EngineRpm = null, PumpVolts = null };
        var points = WorkshopPump.Points(supply.Line, duty, figures.DeadHeadPascals, figures.OpenFlow, SupplyAnalyst.CanBoreMetres);
        foreach (var fault in PumpCurve.FaultsOf(points))
        {
            root.Faults.Add(figures.Path, $"The two figures are no pump: {fault.TrimEnd('.')}", "a flow the pressure can drive through this line", "Time the flow again, and look whether the line's bores and lengths are right.");
        }

        return root.Faults.All.Count > 0
            ? shared
            : shared with { Line = supply.Line with { Parts = [.. supply.Line.Parts.Select(part => part is FuelPump pump ? pump with { Curve = new PumpCurve(points) } : part)] } };
    }

    private static (string Name, SupplyFuel? Fuel) Fuel(ObjectReader root)
    {
        var reader = root.Object("fuel", SupplyForm.Fuel);
        var written = reader?.Text("grade", "E5") ?? "E5";
        var pressure = reader?.Number("vapourPressure", SupplyLimits.VapourPressure) ?? UsualVapourPressure;
        var evaporated = reader?.Number("evaporatedAt70", SupplyLimits.Share);
        if (!FuelGrade.TryParse(written, out var grade))
        {
            root.Faults.Add("fuel.grade", $"There is no fuel \"{written}\"", FuelGrade.Allowed, "Write \"grade\": \"E5\", as the pump says.");
            return (written, null);
        }

        return (grade.Name, new SupplyFuel { Blend = grade.Blend, VapourPressureAt38Pascals = 1000 * pressure, EvaporatedAt70Fraction = evaporated / 100 });
    }

    private static (double Surface, double Vacuum) Tank(ObjectReader root, PressureUnit unit)
    {
        if (root["tank"] is null)
        {
            root.Faults.Missing("tank", "How high the fuel stands in the tank", "mm above the floor, from which all heights are taken", "\"tank\": { \"surface\": 450 }");
        }

        var reader = root.Object("tank", SupplyForm.Tank);
        var surface = reader?.Needed("surface", SupplyLimits.Height) ?? double.NaN;
        var vacuum = reader?.Number("vacuum", SupplyLimits.Pressure(unit, "The vacuum in the tank", 0, 0.5)) ?? 0;
        return (SupplyUnits.FromMillimetres(surface), SupplyUnits.ToPascals(unit, vacuum));
    }

    private static SupplyAttitude Attitude(ObjectReader root)
    {
        var reader = root.Object("attitude", SupplyForm.Attitude);
        var usual = SupplyAttitude.Usual;
        return new SupplyAttitude(
            reader?.Number("bend", SupplyLimits.Gravity) ?? usual.BendG,
            reader?.Number("braking", SupplyLimits.Gravity) ?? usual.BrakingG,
            reader?.Number("slope", SupplyLimits.Share) / 100 ?? usual.SlopePart);
    }

    private static Dictionary<SupplyReadingKind, double> Readings(ObjectReader root, PressureUnit unit)
    {
        var read = new Dictionary<SupplyReadingKind, double>();
        if (root.Object("readings", SupplyForm.Readings) is not { } reader)
        {
            return read;
        }

        void Keep(SupplyReadingKind kind, double? value, Func<double, double> toSi)
        {
            if (value is { } number)
            {
                read[kind] = toSi(number);
            }
        }

        Keep(SupplyReadingKind.DeadHead, reader.Number("deadHead", SupplyLimits.Pressure(unit, "The pressure of the shut line", 0, 3)), value => SupplyUnits.ToPascals(unit, value));
        Keep(SupplyReadingKind.FlowBeforeFilter, reader.Number("flowBeforeFilter", SupplyLimits.Flow), SupplyUnits.ToFlow);
        Keep(SupplyReadingKind.FlowAtChamber, reader.Number("flowAtChamber", SupplyLimits.Flow), SupplyUnits.ToFlow);
        Keep(SupplyReadingKind.Suction, reader.Number("suction", SupplyLimits.Pressure(unit, "The suction", -0.2, 1)), value => SupplyUnits.ToPascals(unit, value));
        Keep(SupplyReadingKind.PressureHeld, reader.Number("held", SupplyLimits.Held), value => value / 100);
        Keep(SupplyReadingKind.PumpVolts, reader.Number("volts", SupplyLimits.Volts), value => value);
        return read;
    }
}
