using Tickover.Workshop.JetChoice;
using Tickover.Workshop.Logs;
using Tickover.Workshop.Mixture;

namespace Tickover.Bench.Road;

/// <summary>From a log to a jet as the trade does it: one band of the log at a time against its target (trade reference 3.2, common practice).</summary>
/// <remarks>Rows of that table for a tip-in, one bank alone and a failing supply are left out: the study has none of them.</remarks>
internal sealed class LogTable(IReadOnlyList<MixturePoint> points, double peakPowerRpm)
{
    private const double Right = 0.6;                     // of half a band: nearer the middle than that is right
    private const double FromEnds = 0.035;                // of λ: the top may differ from peak torque by so much
    private const int Fewest = 2;

    /// <summary>Lean of the middle of target (above zero) or rich, in half bands; null where the log has too little.</summary>
    internal double? Idle => Off(p => p.ThrottleDegrees < 4);

    internal double? Progression => Off(p => p.ThrottleDegrees is >= 4 and < 14);

    internal double? Changeover => Off(p => p.ThrottleDegrees is >= 14 and < 20);

    internal double? Main => Off(p => p.ThrottleDegrees is >= 20);

    internal double? PeakTorque => Off(p => p.ThrottleDegrees >= 48 && p.SpeedRpm < 0.75 * peakPowerRpm);

    internal double? PeakPower => Off(p => p.ThrottleDegrees >= 48 && p.SpeedRpm > 0.82 * peakPowerRpm);

    /// <summary>The part to change and which way: +1 richer, −1 leaner; null when the table asks for nothing.</summary>
    /// <param name="settled">Parts that have been found as good as they get.</param>
    internal (JetPart Part, int Richer)? Asks(IReadOnlySet<JetPart> settled)
    {
        // trade reference 3.6: idle jet until progression is clean, then the main, then the corrector; level where only the changeover is out
        if (!settled.Contains(JetParts.IdleJet) && Wrong(Progression) is { } way)
        {
            return (JetParts.IdleJet, way);
        }

        if (!settled.Contains(JetParts.MainJet) && Wrong(Main) is { } whole)
        {
            return (JetParts.MainJet, whole);
        }

        if (!settled.Contains(JetParts.AirCorrector) && Top() is { } top)
        {
            return (JetParts.AirCorrector, top);
        }

        return !settled.Contains(JetParts.FloatLevel) && Wrong(Changeover) is { } notch ? (JetParts.FloatLevel, notch) : null;
    }

    // right at peak torque and off at peak power, or the other way about
    private int? Top()
    {
        if (PeakPower is not { } power || PeakTorque is not { } torque)
        {
            return null;
        }

        var half = 0.5 * Math.Log(MixtureTargets.At(80).Leanest / MixtureTargets.At(80).Richest);
        return Math.Abs(power - torque) * half > FromEnds || Math.Abs(power) > 1 ? Math.Sign(power) : null;
    }

    private static int? Wrong(double? off) => off is { } value && Math.Abs(value) > Right ? Math.Sign(value) : null;

    private double? Off(Func<MixturePoint, bool> within)
    {
        double[] off = [.. points.Where(within).Select(OffTarget)];
        return off.Length < Fewest ? null : off.Average();
    }

    private static double OffTarget(MixturePoint point)
    {
        var band = MixtureTargets.At(point.ThrottleDegrees ?? 0);
        return Math.Log(point.Lambda / Math.Sqrt(band.Richest * band.Leanest)) / (0.5 * Math.Log(band.Leanest / band.Richest));
    }
}
