using Tickover.Physics.Fuels;
using Tickover.Physics.Inspection;
using Tickover.Physics.Supply;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.StripDown.Levels;

/// <summary>Reads a sheet of float levels: JSON, format <c>tickover-level-1</c>; docs/level-document.md.</summary>
public static class LevelDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = "tickover-level-1";

    private const double Kelvin = 273.15;

    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The sheet, or what is wrong, where, and what to do.</returns>
    public static (LevelSheet? Sheet, IReadOnlyList<Fault> Faults) Read(string json)
    {
        var (written, fault) = SheetText.Read<WrittenLevels>(json, Format, w => w.Format, ("sheet of float levels", "level"));
        if (written is null)
        {
            return (null, [fault!]);
        }

        var (car, carFaults) = SheetText.CarOf(written.Car);
        List<Fault> faults = [.. LevelFaults.Of(written), .. carFaults];
        if (faults.Count > 0)
        {
            return (null, faults);
        }

        var sheet = Make(written, car);
        faults = [.. LevelFaults.Sinking(sheet)];
        return faults.Count > 0 ? (null, faults) : (sheet, faults);
    }

    private static LevelSheet Make(WrittenLevels w, Car? car)
    {
        var celsius = w.Temperature ?? LevelUsual.Celsius;
        _ = FuelGrade.TryParse(w.Fuel, out var grade);
        var density = grade!.At(celsius + Kelvin).DensityKilogramsPerCubicMetre;
        var shape = Shape(w.Float!);
        return new LevelSheet
        {
            Name = string.IsNullOrWhiteSpace(w.Name) ? "Float levels" : w.Name.Trim(),
            Fuel = grade.Name,
            Celsius = celsius,
            Density = density,
            Pressure = w.Pressure!.Value,
            DeadHead = w.DeadHead ?? w.Pressure.Value,
            IdleFlow = w.IdleFlow ?? LevelUsual.IdleFlow,
            Shape = shape,
            Valve = new FloatValve
            {
                Name = "needle",
                SeatMetres = w.Seat!.Value * 1e-3,
                LeverRatio = w.FloatArm!.Value / w.NeedleArm!.Value,
                FloatAreaSquareMetres = shape.VolumeCubicMetres / shape.HeightMetres,
            },
            Gasket = w.Gasket ?? 0,
            Nozzle = w.Nozzle,
            Spill = w.Spill ?? 0,
            Wanted = w.Wanted,
            Limit = w.Limit ?? LevelUsual.Limit,
            MassLimit = w.MassLimit ?? LevelUsual.MassLimit,
            Rule = w.Rule ?? LevelUsual.Rule,
            Scales = w.Scales ?? LevelUsual.Scales,
            Signal = w.Signal ?? LevelUsual.Signal,
            Car = car,
            Floats = [.. w.Carburettors!.Select(c => Float(w, c!, shape, density))],
        };
    }

    private static FloatShape Shape(WrittenFloat f) => f.Diameter is { } diameter
        ? new LyingFloat(diameter * 1e-3, f.Length!.Value * 1e-3)
        : new StraightFloat(f.Area!.Value * 1e-4, f.Height!.Value * 1e-3);

    // a depth measured with the float in the same fuel stands for its mass
    private static MeasuredFloat Float(WrittenLevels w, WrittenLevel c, FloatShape shape, double density) => new()
    {
        Where = c.Where!.Trim(),
        DryMillimetres = c.Dry!.Value,
        From = c.From is "gasket" ? HeightDatum.Gasket : HeightDatum.Lid,
        To = c.To is "top" ? HeightEnd.Top : HeightEnd.Bottom,
        Grams = c.Mass ?? w.Float!.Mass ?? (1e3 * density * shape.Immersed(w.Float!.Sunk!.Value * 1e-3)),
        WetMillimetres = c.Wet,
        DropMillimetres = c.Drop,
    };
}
