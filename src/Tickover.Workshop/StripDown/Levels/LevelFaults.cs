using Tickover.Physics.Fuels;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.StripDown.Levels;

/// <summary>What is wrong with a sheet of levels, where, and what to do.</summary>
internal static class LevelFaults
{
    private const int Most = 16;

    /// <summary>All that is wrong with what is written.</summary>
    /// <param name="w">The sheet.</param>
    /// <returns>The faults; none where it can be used.</returns>
    public static IEnumerable<Fault> Of(WrittenLevels w) =>
        w.Carburettors is not { Count: > 0 and <= Most } each
            ? [new Fault("carburettors", w.Carburettors is { Count: > Most } ? "Too many carburettors" : "No carburettor is written", SheetText.Line($"1 to {Most}, each with \"where\" and \"dry\""), "Write the dry height of each float.")]
            : [.. Fuel(w), .. Wanted(w), .. Float(w.Float), .. Figures(w), .. each.SelectMany((c, i) => One(w, c, $"carburettors[{i}]"))];

    /// <summary>Floats that do not float, and needles that never shut.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <returns>The faults.</returns>
    public static IEnumerable<Fault> Sinking(LevelSheet sheet) =>
        from pair in sheet.Floats.Select((f, i) => (Float: f, Index: i))
        let carries = 1e3 * sheet.Density * sheet.Shape.VolumeCubicMetres
        where pair.Float.Grams >= carries
        select new Fault(
            $"carburettors[{pair.Index}].mass",
            SheetText.Line($"{pair.Float.Grams:0.0} g is more than this float can carry in {sheet.Fuel} ({carries:0.0} g): it would sink"),
            SheetText.Line($"below {carries:0.0} g"),
            "Shake it: fuel inside means a leak. Otherwise measure its area and height again.");

    private static IEnumerable<Fault> Fuel(WrittenLevels w) =>
        string.IsNullOrWhiteSpace(w.Fuel) ? [new Fault("fuel", "Which fuel the level is for is not said", FuelGrade.Allowed, "Say it: a float lies deeper in a lighter fuel.")]
        : !FuelGrade.TryParse(w.Fuel, out _) ? [new Fault("fuel", $"\"{w.Fuel}\" is not known here", FuelGrade.Allowed, "Write one of these.")]
        : [];

    private static IEnumerable<Fault> Wanted(WrittenLevels w)
    {
        foreach (var (name, value, what, example) in new (string, double?, string, string)[]
        {
            ("pressure", w.Pressure, "Pressure before the needle", "\"pressure\": 20 (kPa)"),
            ("seat", w.Seat, "Bore of the needle's seat", "\"seat\": 1.75 (mm)"),
            ("floatArm", w.FloatArm, "Distance from pivot to the middle of the float", "\"floatArm\": 42 (mm)"),
            ("needleArm", w.NeedleArm, "Distance from pivot to the needle", "\"needleArm\": 14 (mm)"),
        })
        {
            if (value is null)
            {
                yield return SheetText.Missing(name, what, example);
            }
        }

        if (w.DeadHead < w.Pressure)
        {
            yield return new Fault("deadHead", "Less than the pressure while the engine runs", "no less than \"pressure\"", "See whether the two were changed round.");
        }
    }

    private static IEnumerable<Fault> Float(WrittenFloat? f)
    {
        const string form = "\"area\" (cm²) and \"height\" (mm) of straight floats, or \"diameter\" and \"length\" (mm) of round ones lying";
        if (f is not ({ Area: not null, Height: not null, Diameter: null, Length: null } or { Diameter: not null, Length: not null, Area: null, Height: null }))
        {
            return [new Fault("float", "Its size is not told, or told twice", form, "Measure all bodies of a float together, as they lie in the fuel.")];
        }

        return SheetText.Figures(
            "float.", ("mass", f.Mass, 1, 200, "g"), ("area", f.Area, 0.5, 80, "cm²"), ("height", f.Height, 3, 80, "mm"), ("diameter", f.Diameter, 5, 60, "mm"), ("length", f.Length, 5, 200, "mm"), ("sunk", f.Sunk, 1, f.Height ?? f.Diameter!.Value, "mm"));
    }

    private static IEnumerable<Fault> Figures(WrittenLevels w) => SheetText.Figures(
        "",
        ("temperature", w.Temperature, -20, 80, "°C"),
        ("pressure", w.Pressure, 0, 100, "kPa"),
        ("deadHead", w.DeadHead, 0, 150, "kPa"),
        ("idleFlow", w.IdleFlow, 0, 20, "l/h"),
        ("seat", w.Seat, 0.5, 5, "mm"),
        ("floatArm", w.FloatArm, 5, 150, "mm"),
        ("needleArm", w.NeedleArm, 2, 100, "mm"),
        ("gasket", w.Gasket, 0, 4, "mm"),
        ("nozzle", w.Nozzle, -60, 100, "mm below the lid"),
        ("spill", w.Spill, -60, 60, "mm below the lid"),
        ("wanted", w.Wanted, 0, 100, "mm below the lid"),
        ("limit", w.Limit, 0.05, 5, "mm"),
        ("massLimit", w.MassLimit, 0.05, 10, "g"),
        ("rule", w.Rule, 0.01, 3, "mm"),
        ("scales", w.Scales, 0.01, 5, "g"),
        ("signal", w.Signal, 60, 20_000, "Pa"));

    private static List<Fault> One(WrittenLevels w, WrittenLevel? c, string at)
    {
        if (string.IsNullOrWhiteSpace(c?.Where))
        {
            return [new Fault(at, "It does not say which carburettor it is", "\"where\": \"front\"", "Write it as it stands on the engine.")];
        }

        List<Fault> faults = [.. SheetText.Figures($"{at}.", ("dry", c.Dry, -5, 80, "mm"), ("mass", c.Mass, 1, 200, "g"), ("wet", c.Wet, -20, 80, "mm below the lid"), ("drop", c.Drop, 0, 100, "mm"))];
        if (c.Dry is null)
        {
            faults.Add(SheetText.Missing($"{at}.dry", "The dry height of the float", "\"dry\": 12.5 (mm)"));
        }

        faults.AddRange(Datum(c, at));
        if (c.Mass is null && w.Float is { Mass: null, Sunk: null })
        {
            faults.Add(new Fault($"{at}.mass", "Neither its mass nor how deep it floats is told", "\"mass\" (g) here or in \"float\", or \"sunk\" (mm) in \"float\"", "Weigh it, or let it float in the fuel and measure how much of it is under."));
        }

        return faults;
    }

    private static IEnumerable<Fault> Datum(WrittenLevel c, string at)
    {
        if (c.From is not ("lid" or "gasket"))
        {
            yield return new Fault($"{at}.from", c.From is null ? "What the height is measured from is not said" : $"\"{c.From}\" is no datum", "\"lid\" for the bare face, \"gasket\" with the gasket lying on it", "Say it: published heights differ by the gasket.");
        }

        if (c.To is not ("bottom" or "top"))
        {
            yield return new Fault($"{at}.to", c.To is null ? "Which side of the float it is measured to is not said" : $"\"{c.To}\" is no side", "\"bottom\" or \"top\" of the float as it sits on the car", "Say it; with the lid upside down the side facing you is its bottom.");
        }

        if (c.Drop < c.Dry)
        {
            yield return new Fault($"{at}.drop", "A float hanging down cannot stand higher than one that shuts the needle", "more than \"dry\"", "See whether the two were changed round.");
        }
    }
}
