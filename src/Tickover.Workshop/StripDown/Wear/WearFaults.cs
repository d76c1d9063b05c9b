using System.Text.Json;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Cars.Text;

namespace Tickover.Workshop.StripDown.Wear;

/// <summary>What is wrong with a sheet of wear, where, and what to do.</summary>
internal static class WearFaults
{
    private const int Most = 24;

    /// <summary>All that is wrong.</summary>
    /// <param name="w">The sheet as written.</param>
    /// <returns>The faults; none where it can be used.</returns>
    public static IEnumerable<Fault> Of(WrittenWear w) =>
        w.Barrels is not { Count: > 0 and <= Most } barrels
            ? [new Fault("barrels", w.Barrels is { Count: > Most } ? "Too many barrels" : "No barrel is written", SheetText.Line($"1 to {Most}, each with \"where\", \"carburettor\" and \"bore\""), "Write what was measured of each barrel, in engine order.")]
            : [.. Top(w), .. Limits(w.Limits), .. barrels.SelectMany((b, i) => Barrel(w, b, $"barrels[{i}]")), .. (w.Carburettors ?? []).SelectMany((c, i) => WearBodyFaults.Of(w, c, $"carburettors[{i}]"))];

    private static IEnumerable<Fault> Top(WrittenWear w)
    {
        if (w.IdleRpm is null)
        {
            yield return SheetText.Missing("idleRpm", "The idle speed", "\"idleRpm\": 850");
        }

        if (w.Car is not { ValueKind: JsonValueKind.Object } && w.Engine is not { Swept: not null, Depression: not null })
        {
            yield return new Fault("engine", "Neither a car nor the engine is told", "\"car\": a car document, or \"engine\": { \"swept\": 370, \"depression\": 55 }", "Without it nobody can say what a leak does at idle: write cm³ one barrel feeds and kPa of depression at idle.");
        }

        foreach (var fault in SheetText.Figures("", ("idleRpm", w.IdleRpm, 300, 2500, "rpm"), ("idleAir", w.IdleAir, 0.3, 40, "kg/h"), ("micrometer", w.Micrometer, 0.001, 0.1, "mm"), ("engine.swept", w.Engine?.Swept, 20, 3000, "cm³"), ("engine.depression", w.Engine?.Depression, 5, 90, "kPa")))
        {
            yield return fault;
        }
    }

    private static IEnumerable<Fault> Limits(WearLimits? limits)
    {
        if (limits is not { } l)
        {
            yield break;
        }

        foreach (var fault in SheetText.Figures(
            "limits.", ("spindleGood", l.SpindleGood, 0, 1, "mm"), ("spindleUsable", l.SpindleUsable, 0, 1, "mm"), ("spindleRebush", l.SpindleRebush, 0, 1, "mm"), ("light", l.Light, 0, 1, "mm"), ("angle", l.Angle, 0.1, 10, "°"), ("oval", l.Oval, 0, 1, "mm"),
            ("flange", l.Flange, 0, 1, "mm"), ("hold", l.Hold, 1, 600, "s"), ("seep", l.Seep, 0, 100, "ml/h"), ("pump", l.Pump, 1, 50, "%"), ("bypassKgh", l.BypassKgh, 0, 10, "kg/h")))
        {
            yield return fault;
        }

        if (l.SpindleGood > l.SpindleUsable || l.SpindleUsable > l.SpindleRebush)
        {
            yield return new Fault("limits", "A good spindle may not be looser than a usable one", "spindleGood, spindleUsable, spindleRebush rising", "Write them in this order.");
        }
    }

    private static List<Fault> Barrel(WrittenWear w, WrittenWearBarrel? b, string at)
    {
        if (string.IsNullOrWhiteSpace(b?.Where) || string.IsNullOrWhiteSpace(b.Carburettor))
        {
            return [new Fault(at, "It does not say which barrel of which carburettor it is", "\"where\": \"1\", \"carburettor\": \"front\"", "Write both.")];
        }

        List<Fault> faults = [.. SheetText.Figures($"{at}.", ("bore", b.Bore, 15, 80, "mm"), ("boreAcross", b.BoreAcross, 15, 80, "mm")), .. Plate(b, at), .. (b.Spindle ?? []).SelectMany((s, i) => Bush(w, b, s, $"{at}.spindle[{i}]")), .. Rest(b, at)];
        if (b.Bore is null)
        {
            faults.Add(SheetText.Missing($"{at}.bore", "The throttle bore", "\"bore\": 40 (mm)"));
        }

        if (w.Barrels!.Count(other => string.Equals(other?.Where?.Trim(), b.Where.Trim(), StringComparison.Ordinal)) > 1)
        {
            faults.Add(new Fault($"{at}.where", $"There are two barrels \"{b.Where}\"", "a name of its own for each", "Number them as they stand on the engine."));
        }

        return faults;
    }

    private static IEnumerable<Fault> Plate(WrittenWearBarrel b, string at)
    {
        if (b.Plate is not { } plate)
        {
            yield break;
        }

        foreach (var fault in SheetText.Figures($"{at}.plate.", ("angle", plate.Angle, 0, 25, "°"), ("longAxis", plate.LongAxis, 15, 90, "mm"), ("light", plate.Light, 0, 100, "% of the rim"), ("gap", plate.Gap, 0, 1, "mm")))
        {
            yield return fault;
        }

        if (plate.LongAxis < b.Bore)
        {
            yield return new Fault($"{at}.plate.longAxis", SheetText.Line($"A plate of {plate.LongAxis} mm cannot shut a bore of {b.Bore} mm"), "no less than the bore", "Measure the plate square to the spindle's groove.");
        }

        if (plate.Light > 0 && plate.Gap is null)
        {
            yield return SheetText.Missing($"{at}.plate.gap", "How wide the light is", "\"gap\": 0.05 (mm, by feeler or wire)");
        }
    }

    private static List<Fault> Bush(WrittenWear w, WrittenWearBarrel b, WrittenBush? s, string at)
    {
        if (s is not { Spindle: { } spindle, Bush: { } bush, Length: not null })
        {
            return [new Fault(at, "Spindle, bush or length of the bearing is missing", "\"spindle\": 7.96, \"bush\": 8.05, \"length\": 12 (mm)", "Measure the spindle where it runs, and the bush there in two axes.")];
        }

        List<Fault> faults = [.. SheetText.Figures($"{at}.", ("spindle", spindle, 3, 20, "mm"), ("bush", bush, 3, 22, "mm"), ("length", s.Length, 1, 60, "mm"))];
        if (spindle > bush + (2 * (w.Micrometer ?? 0.01)))
        {
            faults.Add(new Fault($"{at}.spindle", SheetText.Line($"A spindle of {spindle} mm does not go into a bush of {bush} mm"), "no more than the bush", "See whether the two were changed round, and measure where it runs and not beside it."));
        }
        else if (bush - spindle > 1)
        {
            faults.Add(new Fault($"{at}.bush", SheetText.Line($"{bush - spindle:0.##} mm of clearance is no worn bush"), "up to 1 mm", "Measure again: is a bush missing there?"));
        }

        if (spindle >= b.Bore)
        {
            faults.Add(new Fault($"{at}.spindle", SheetText.Line($"A spindle of {spindle} mm in a throttle bore of {b.Bore} mm"), "less than the bore", "Check both."));
        }

        return faults;
    }

    private static IEnumerable<Fault> Rest(WrittenWearBarrel b, string at)
    {
        if (b.Pump is { } shot)
        {
            if (shot is not { Millilitres: not null, Strokes: not null })
            {
                yield return SheetText.Missing($"{at}.pump", "Volume or number of strokes", "\"millilitres\": 5.5, \"strokes\": 10");
            }

            foreach (var fault in SheetText.Figures($"{at}.pump.", ("millilitres", shot.Millilitres, 0, 200, "ml"), ("strokes", shot.Strokes, 1, 200, "strokes")))
            {
                yield return fault;
            }
        }

        foreach (var (hole, i) in (b.Tube?.Holes ?? []).Select((h, i) => (h, i)))
        {
            if (hole is null || HoleText.Row(hole) is null)
            {
                yield return new Fault($"{at}.tube.holes[{i}]", $"\"{hole}\" is no row of holes", HoleText.RowRange, $"Write it as {HoleText.RowForm}.");
            }
        }
    }
}
