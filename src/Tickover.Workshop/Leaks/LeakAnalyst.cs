using System.Globalization;
using Tickover.Physics;
using Tickover.Physics.Air;
using Tickover.Physics.Leaks;
using Tickover.Physics.Walls;
using Tickover.Workshop.Leaks.Working;

namespace Tickover.Workshop.Leaks;

/// <summary>Works out what a leak test says.</summary>
public static class LeakAnalyst
{
    private const double SecondsPerMinute = 60;
    private const double LitresPerCubicMetre = 1000;

    /// <summary>Works it all out.</summary>
    /// <param name="sheet">The test.</param>
    /// <returns>The analysis.</returns>
    public static LeakAnalysis Of(LeakSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var panel = sheet.Panel is { } described ? Panel(described) : null;
        var test = Test(sheet, panel);
        var rate = test.Leak();
        var finding = Finding(sheet, panel);
        double? limit = sheet.LimitMillibarLitres * LeakUnits.MillibarLitrePerSecond;
        var seconds = limit is { } asked ? test.SecondsToSee(asked) : (double?)null;
        return new LeakAnalysis
        {
            Sheet = sheet,
            Rate = rate,
            Panel = finding,
            HoleMetres = rate.IsSeen ? Hole(rate, rate.PascalCubicMetresPerSecond, sheet) : null,
            SmallestHoleMetres = Hole(rate, rate.SmallestSeen, sheet),
            SecondsForLimit = seconds,
            Curve = Curve(sheet, test, rate),
            Verdict = LeakJudge.Of(sheet, rate, finding, limit, seconds),
            Doubts = [.. Doubts(sheet, rate)],
            Working = LeakWorking.Of(sheet, test, rate),
        };
    }

    private static FlatPanel Panel(LeakPanel panel) => new()
    {
        ShortMetres = panel.ShortMillimetres / 1000,
        LongMetres = panel.LongMillimetres / 1000,
        ThicknessMetres = panel.ThicknessMillimetres / 1000,
        StiffnessPascals = MetalTable.Of(panel.Metal).StiffnessPascals,
    };

    private static DecayTest Test(LeakSheet sheet, FlatPanel? panel) => new()
    {
        VolumeCubicMetres = sheet.Litres / LitresPerCubicMetre,
        // Two such panels, the largest and the one across from it; the others are smaller and much stiffer.
        SpringCubicMetresPerPascal = panel is null ? 0 : 2 * panel.Spring(),
        Readings = [.. sheet.Readings.Select(r => new DecayReading(
            r.Minutes * SecondsPerMinute,
            r.GaugePascals,
            (r.Celsius ?? LeakSheet.UsualCelsius) + AirConstants.IcePointKelvin,
            r.BarometerPascals ?? sheet.BarometerPascals))],
        Instruments = new DecayInstruments
        {
            GaugePascals = sheet.GaugeErrorPascals,
            ThermometerKelvins = sheet.HasTemperature ? sheet.ThermometerError : 0,
            UnseenDriftKelvins = sheet.DriftKelvins,
            VolumePart = sheet.LitresWithin,
        },
    };

    private static PanelFinding Finding(LeakSheet sheet, FlatPanel? panel)
    {
        var used = sheet.Readings.Max(r => r.GaugePascals);
        if (panel is null)
        {
            return new PanelFinding(PanelFinding.UsualPascals, null, null, used, IsMeasured: false);
        }

        var stress = sheet.Panel!.StressMegapascals * 1e6 ?? MetalTable.Of(sheet.Panel.Metal).GentleStressPascals;
        var bears = panel.PressureAtStress(stress);
        return new PanelFinding(
            Math.Min(bears, PanelFinding.MostPascals), panel.BreathingPressure(PanelEdge.Clamped), PanelFinding.TypeTestPascals / bears, used, IsMeasured: true);
    }

    private static double Hole(LeakRate rate, double leak, LeakSheet sheet) =>
        EquivalentHole.Diameter(leak, Math.Max(rate.GaugePascals, sheet.GaugeErrorPascals), sheet.BarometerPascals, rate.GasKelvins);

    private static DecayPoint[] Curve(LeakSheet sheet, DecayTest test, LeakRate rate)
    {
        var corrected = test.Readings.Select(r => r.AbsolutePascals * rate.GasKelvins / r.GasKelvins - sheet.BarometerPascals).ToArray();
        var (minutes, mean) = (sheet.Readings.Average(r => r.Minutes), corrected.Average());
        var squares = sheet.Readings.Sum(r => (r.Minutes - minutes) * (r.Minutes - minutes));
        var slope = sheet.Readings.Zip(corrected, (r, p) => (r.Minutes - minutes) * (p - mean)).Sum() / squares;
        return [.. sheet.Readings.Zip(corrected, (r, p) => new DecayPoint(r.Minutes, r.GaugePascals, p, mean + slope * (r.Minutes - minutes)))];
    }

    private static IEnumerable<string> Doubts(LeakSheet sheet, LeakRate rate)
    {
        if (!sheet.HasTemperature)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"No temperature was read. One kelvin moves the gauge by {LeakFigures.Pressure(rate.AbsolutePascals / rate.GasKelvins, sheet.Unit)}; ±{sheet.DriftKelvins:0.#} K is allowed for, which hides all but large leaks.");
        }

        if (sheet.Readings.Count < 4)
        {
            yield return $"Only {sheet.Readings.Count} readings: a slip in one cannot be told from a leak. Read every few minutes.";
        }

        if (rate.Validity.Kind is not ValidityKind.Inside)
        {
            yield return "The pressure fell by more than a third: a leak slows as it falls. The rate is that of the middle of the test.";
        }

        if (sheet.Panel is null)
        {
            yield return "The largest flat panel is not described: its bearing is not known, and the room its spring gives is left out. That makes a leak read too small, on a thin tank by some tenths.";
        }
    }
}
