namespace Tickover.Workshop.StripDown.Levels;

/// <summary>How a level comes out, with the numbers put in.</summary>
public static class LevelWorking
{
    private const double Gravity = 9.80665;

    /// <summary>The working of one carburettor.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="v">What was found.</param>
    /// <returns>Lines.</returns>
    public static IReadOnlyList<string> Of(LevelSheet sheet, LevelVerdict v)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(v);
        var f = v.Float;
        var height = f.To == HeightEnd.Top ? sheet.Shape.HeightMetres * 1000 : 0;
        var gasket = f.From == HeightDatum.Gasket ? sheet.Gasket : 0;
        var bottom = f.DryMillimetres + gasket + height;
        var force = sheet.Pressure * 1e3 * Math.PI / 4 * sheet.Valve.SeatMetres * sheet.Valve.SeatMetres / sheet.Valve.LeverRatio;
        List<string> lines =
        [
            SheetText.Line($"{f.Where}: the float's lowest point is {f.DryMillimetres:0.0}{(gasket > 0 ? SheetText.Line($" + {gasket:0.0} of gasket") : "")}{(height > 0 ? SheetText.Line($" + {height:0.0} of its own height") : "")} = {bottom:0.0} mm below the lid as the needle shuts."),
            SheetText.Line($"It carries {f.Grams:0.0} g, and {force / Gravity * 1e3:0.0} g to hold {sheet.Pressure:0.#} kPa on a {sheet.Valve.SeatMetres * 1e3:0.00} mm seat through a lever of {sheet.Valve.LeverRatio:0.0}: {((f.Grams * 1e-3) + (force / Gravity)) / sheet.Density * 1e6:0.0} cm³ of {sheet.Fuel} at {sheet.Density:0} kg/m³."),
        ];
        if (v is { Sunk: { } sunk, Computed: { } level })
        {
            lines.Add(SheetText.Line($"For that it lies {sunk:0.0} mm deep; {bottom:0.0} + {level.Value - bottom + sunk:0.0} for what the engine takes − {sunk:0.0} = {level.Value:0.0} mm below the lid, ±{level.PlusMinus:0.0} at 90 %."));
        }

        return lines;
    }
}
