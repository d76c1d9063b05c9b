using System.Globalization;

namespace Tickover.Instruments.Logs.Columns;

/// <summary>What a heading says its column holds: the words loggers, spreadsheets and people use.</summary>
internal static class HeadingWords
{
    private static readonly string[] NotReadings =
    [
        "target", "tgt", "desired", "demand", "command", "commanded", "setpoint", "error", "err", "corr", "correction", "trim", "status", "state",
        "flag", "valid", "lat", "lon", "latitude", "longitude", "sats", "satellites", "heading", "date", "datum", "ignition", "ign", "advance", "timing", "dwell",
        "duty", "pw", "accel", "gforce", "gear", "lap", "marker", "note", "comment", "index", "row", "sample", "count", "avg",
    ];

    private static readonly string[] Temperature = ["t", "temp", "temperature", "tmp", "deg", "celsius", "c", "f"];

    private static readonly (LogQuantity Quantity, Func<HeadingText, bool> Fits)[] Rules =
    [
        (LogQuantity.FuelPressure, h => h.HasAny("fuel", "petrol", "fp") && (h.HasAny("pressure", "press", "pres", "p", "fp") || LogUnits.PressureNameIn(h.Unit) is not null)),
        (LogQuantity.OilTemperature, h => h.HasAny("oil", "ot", "öl", "huile") && (h.HasAny(Temperature) || IsTemperature(h.Unit))),
        (LogQuantity.Ignored, h => h.HasAny("oil", "öl", "huile", "egt", "exhaust", "exh", "brake", "gearbox", "alt", "altitude")),
        (LogQuantity.EngineSpeed, h => h.HasAny("rpm", "revs", "rev", "revolutions", "tacho", "tach", "drehzahl", "enginespeed", "regime")
            || (h.HasAny("engine", "crank", "motor") && h.HasAny("speed")) || (h.Words is ["n"] && h.Unit.Length > 0) || IsRevolutions(h)),
        (LogQuantity.RoadSpeed, h => h.HasAny("speed", "vss", "velocity", "kph", "mph", "kmh", "gpsspeed", "geschwindigkeit", "vitesse")),
        (LogQuantity.Lambda, h => h.HasAny("lambda", "λ", "lam", "afr", "wideband", "wb", "ego", "phi", "lsu", "wbo") || (h.HasAny("air") && h.HasAny("fuel")) || (h.HasAny("mixture") && !h.HasAny("temp"))),
        (LogQuantity.AirTemperature, h => h.HasAny("iat", "mat", "act") || (h.HasAny("intake", "inlet", "air", "ambient", "manifold", "charge") && (h.HasAny(Temperature) || IsTemperature(h.Unit)))),
        (LogQuantity.ManifoldPressure, h => h.HasAny("map", "manifold", "vac", "vacuum", "depression", "mani", "unterdruck", "saugrohr", "pman", "vacuums") || (h.HasAny("intake", "inlet") && h.HasAny("pressure", "press", "p"))),
        (LogQuantity.Throttle, h => h.HasAny("tps", "throttle", "tp", "pedal", "butterfly", "plate", "drossel", "drosselklappe", "papillon", "thr")),
        (LogQuantity.CoolantTemperature, h => h.HasAny("ect", "clt", "coolant", "water", "cts", "wassertemp") || (h.HasAny("engine", "motor", "head", "block") && h.HasAny(Temperature))),
        (LogQuantity.Time, h => h.HasAny("time", "timestamp", "seconds", "secs", "sec", "millis", "elapsed", "clock", "zeit", "temps", "uhrzeit") || h.Words is ["t" or "s" or "ms"] || h.Words is ["t", "s" or "ms"]),
    ];

    /// <summary>What a heading says.</summary>
    /// <param name="heading">The heading.</param>
    /// <returns>The quantity; null where it says nothing known.</returns>
    public static LogQuantity? Find(HeadingText heading)
    {
        if (heading.HasAny(NotReadings) && !(heading.HasAny("time", "timestamp") && heading.HasAny("date")))
        {
            return LogQuantity.Ignored;
        }

        foreach (var (quantity, fits) in Rules)
        {
            if (fits(heading))
            {
                return quantity;
            }
        }

        return null;
    }

    /// <summary>The bank a heading names: left or 1 is 1, right or 2 is 2.</summary>
    /// <param name="heading">The heading.</param>
    /// <returns>The bank, or null.</returns>
    public static int? Bank(HeadingText heading)
    {
        if (heading.HasAny("left", "l", "lh", "links", "gauche", "front"))
        {
            return 1;
        }

        if (heading.HasAny("right", "r", "rh", "rechts", "droite", "rear"))
        {
            return 2;
        }

        return heading.Words.Select(w => int.TryParse(w, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n is > 0 and <= 12 ? n : (int?)null).LastOrDefault(n => n is not null);
    }

    private static bool IsTemperature(string unit) => unit.Length > 0 && LogUnits.Find(LogQuantity.OilTemperature, unit) is not null;

    private static bool IsRevolutions(HeadingText heading) => heading.Unit.Length > 1 && heading.Unit is not "Hz" && LogUnits.Find(LogQuantity.EngineSpeed, heading.Unit) is not null;
}
