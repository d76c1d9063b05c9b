using System.Globalization;
using Tickover.Physics.Inspection;

namespace Tickover.Workshop.StripDown.Jets;

/// <summary>Judges jets by stamp, gauge and flow, each and as sets.</summary>
public static class JetJudge
{
    /// <summary>How far the flow of a jet may be off the middle of its set, as a part (trade report 1.11, common practice).</summary>
    public const double SetLimit = 0.015;

    private const double Ninety = 1.645;
    private const double Celsius = 273.15;
    private const double PinBand = 0.012;                   // mm: gauges by hundredths, and the feel
    private const double StampBand = 0.01;                  // mm: what makers hold (common practice)
    private const double Millimetres = 1000;
    private const double MillilitresAMinute = 6e7;          // of m³/s

    /// <summary>Judges all jets of a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <returns>Each jet in its order, and the sets of two and more on the bench.</returns>
    public static (IReadOnlyList<JetVerdict> Jets, IReadOnlyList<JetSetVerdict> Sets) Judge(JetSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var verdicts = sheet.Jets.Select(j => Of(sheet, j)).ToList();
        var sets = verdicts.GroupBy(v => (v.Jet.Part, v.Jet.Stamp)).Select(g => (g.Key, Measured: g.Where(v => v.Flow is not null).ToList())).Where(g => g.Measured.Count > 1).ToList();
        foreach (var (_, measured) in sets)
        {
            // the middle one, so that one drilled or blocked jet does not make all others look wrong
            var middle = Middle.Of(measured.Select(v => v.Flow!.Value));
            foreach (var one in measured)
            {
                verdicts[verdicts.IndexOf(one)] = one with { OffSet = (one.Flow!.Value / middle) - 1 };
            }
        }

        return (verdicts, [.. sets.Select(s => Set(s.Key.Part, s.Key.Stamp, [.. verdicts.Where(v => v.OffSet is not null && (v.Jet.Part, v.Jet.Stamp) == s.Key)]))]);
    }

    private static JetSetVerdict Set(string part, string stamp, IReadOnlyList<JetVerdict> set) => new(
        part,
        stamp,
        set.Count,
        set.Max(v => v.OffSet!.Value) - set.Min(v => v.OffSet!.Value),
        [.. set.Where(v => Math.Abs(v.OffSet!.Value) - v.OffSetBand > SetLimit)],
        [.. set.Where(v => Math.Abs(v.OffSet!.Value) - v.OffSetBand <= SetLimit && Math.Abs(v.OffSet!.Value) + v.OffSetBand > SetLimit)]);

    private static JetVerdict Of(JetSheet sheet, JetRun jet)
    {
        var verdict = new JetVerdict { Jet = jet, StampBore = StampBore(sheet, jet, sheet.Stamps) };
        if (jet is { Millilitres: { } volume, Seconds: { } seconds })
        {
            var run = new BenchRun { VolumeCubicMetres = volume * 1e-6, Seconds = seconds, HeadAtFirstMetres = sheet.HeadAtFirst / Millimetres, HeadAtLastMetres = sheet.HeadAtLast / Millimetres };
            var bore = FlowBench.BoreOf(run, sheet.Properties, sheet.Celsius + Celsius, sheet.LengthRatio, new BenchDeviations());
            verdict = verdict with
            {
                FlowBore = bore.DiameterMetres * Millimetres,
                FlowBand = Ninety * bore.DeviationMetres * Millimetres,
                Flow = run.FlowCubicMetresPerSecond * MillilitresAMinute,
                OffSetBand = Ninety * 2 * bore.RepeatMetres / bore.DiameterMetres,
                Validity = bore.Validity,
            };
        }

        var finding = Finding(sheet, verdict);
        return verdict with { Finding = finding, Words = JetWords.Of(verdict, finding) };
    }

    private static double? StampBore(JetSheet sheet, JetRun jet, StampKind kind)
    {
        if (!double.TryParse(jet.Stamp.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) || !(number > 0))
        {
            return null;
        }

        // A stamp with a point, such as 1.35, is the bore itself.
        return kind == StampKind.Bore ? (number < 10 && jet.Stamp.AsSpan().ContainsAny('.', ',') ? number : number / 100) : BoreByFlow(sheet, number);
    }

    private static double? BoreByFlow(JetSheet sheet, double millilitresAMinute)
    {
        var head = (sheet.StampHead ?? sheet.HeadAtFirst) / Millimetres;
        try
        {
            var run = new BenchRun { VolumeCubicMetres = millilitresAMinute * 1e-6, Seconds = 60, HeadAtFirstMetres = head, HeadAtLastMetres = head };
            return FlowBench.BoreOf(run, sheet.Properties, sheet.Celsius + Celsius, sheet.LengthRatio, new BenchDeviations()).DiameterMetres * Millimetres;
        }
        catch (ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    private static JetFinding Finding(JetSheet sheet, JetVerdict v)
    {
        var pin = v.Jet.PinMillimetres;
        if (v.StampBore is not { } stamp || (pin is null && v.FlowBore is null))
        {
            return v.FlowBore is { } alone && pin is { } gauge ? Between(alone - gauge, v.FlowBand + PinBand, JetFinding.Rounded, JetFinding.Blocked, JetFinding.Agrees) : JetFinding.Unknown;
        }

        var byPin = pin is { } p ? Sign(p - stamp, PinBand + StampBand) : (int?)null;
        var byFlow = v.FlowBore is { } f ? Sign(f - stamp, v.FlowBand + StampBand) : (int?)null;
        if (byPin is null or not 0 && byFlow is null or not 0 && IsOtherNumbering(sheet, v))
        {
            return JetFinding.OtherNumbering;
        }

        return (byPin, byFlow) switch
        {
            (0, -1) => JetFinding.Blocked,
            (0, 1) => JetFinding.Rounded,
            (1, -1) => JetFinding.Blocked,
            (1, _) or (null, 1) => JetFinding.Wide,
            (-1, 1) => JetFinding.Rounded,
            (-1, 0) => JetFinding.Rounded,
            (-1, _) => JetFinding.Narrow,
            (null, -1) => JetFinding.Blocked,
            _ => JetFinding.Agrees,
        };
    }

    private static bool IsOtherNumbering(JetSheet sheet, JetVerdict v)
    {
        var measured = v.FlowBore ?? v.Jet.PinMillimetres;
        var other = StampBore(sheet, v.Jet, sheet.Stamps == StampKind.Bore ? StampKind.Flow : StampKind.Bore);
        return measured is { } bore && other is { } meant && Math.Abs(bore - meant) <= v.FlowBand + StampBand + (v.FlowBore is null ? PinBand : 0);
    }

    private static JetFinding Between(double off, double band, JetFinding above, JetFinding below, JetFinding within) => Sign(off, band) switch { 1 => above, -1 => below, _ => within };

    private static int Sign(double off, double band) => off > band ? 1 : off < -band ? -1 : 0;
}
