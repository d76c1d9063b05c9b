using System.Globalization;
using Tickover.Physics.Leaks;

namespace Tickover.Workshop.Leaks.Working;

/// <summary>The working of a leak test, line by line.</summary>
internal static class LeakWorking
{
    public static IReadOnlyList<string> Of(LeakSheet sheet, DecayTest test, LeakRate rate)
    {
        var (first, last) = (test.Readings[0], test.Readings[^1]);
        var room = rate.AbsolutePascals * test.SpringCubicMetresPerPascal * 1000;
        return
        [
            string.Create(CultureInfo.InvariantCulture, $"p/T at the beginning ({first.GaugePascals:0} + {first.BarometerPascals:0}) Pa / {first.GasKelvins:0.00} K = {first.AbsolutePascals / first.GasKelvins:0.000} Pa/K; at the end {last.AbsolutePascals / last.GasKelvins:0.000}."),
            string.Create(CultureInfo.InvariantCulture, $"Q = −T (V d(p/T)/dt + …), a line through {sheet.Readings.Count} readings over {sheet.Minutes:0.#} min, V {sheet.Litres:0.#} l{(room > 0 ? string.Create(CultureInfo.InvariantCulture, $" and {room:0.0} l of room by the spring of the panels") : string.Empty)}: {LeakFigures.Leak(rate.PascalCubicMetresPerSecond)}. Leaks, equation 3."),
            $"By the gauge alone it would read {LeakFigures.Leak(rate.WithoutTemperature)}. Equation 2.",
            string.Create(CultureInfo.InvariantCulture, $"Without a leak such readings scatter by {LeakFigures.Leak(rate.DeviationOfNone)}: gauge ±{sheet.GaugeErrorPascals / sheet.Unit.Pascals:0.####} {sheet.Unit.Words}, {(sheet.HasTemperature ? string.Create(CultureInfo.InvariantCulture, $"thermometer ±{sheet.ThermometerError:0.##} K, ") : string.Empty)}drift nobody sees ±{sheet.DriftKelvins:0.##} K. Equations 5 and 6."),
            $"Taken for a leak above {LeakFigures.Leak(rate.Threshold)}; to be trusted to see it takes {LeakFigures.Leak(rate.SmallestSeen)}. Equation 7.",
        ];
    }
}
