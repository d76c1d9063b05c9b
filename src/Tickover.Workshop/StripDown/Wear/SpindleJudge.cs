using Tickover.Physics.Inspection;

namespace Tickover.Workshop.StripDown.Wear;

/// <summary>Judges spindles in their bushes.</summary>
/// <param name="sheet">The sheet.</param>
/// <param name="idle">The engine at idle.</param>
internal sealed class SpindleJudge(WearSheet sheet, WearIdle idle)
{
    private const double MuchOfIdle = 0.10;                 // from where a worn spindle is bushed anew at once (assumed)
    private const double Percent = 100;

    /// <summary>One bearing.</summary>
    /// <param name="barrel">The barrel beside it.</param>
    /// <param name="fit">The bearing.</param>
    /// <returns>What it is.</returns>
    public WearItem Of(WornBarrel barrel, BushFit fit)
    {
        var radial = Math.Max(0, fit.BushMillimetres - fit.SpindleMillimetres) / 2;
        var band = Math.Sqrt(2) * sheet.Micrometer / 2;     // two readings, half of each
        var (air, least, most) = Air(fit, radial, band);
        var share = idle.Share(air);
        var limits = sheet.Limits;
        var grade = radial <= limits.SpindleGood ? WearGrade.Good
            : radial <= limits.SpindleUsable ? WearGrade.Usable
            : radial < limits.SpindleRebush && share < MuchOfIdle ? WearGrade.Worn : WearGrade.Bad;
        return new WearItem
        {
            Where = $"barrel {barrel.Where}, {fit.End}",
            Kind = WearKind.Spindle,
            Grade = grade,
            Measured = SheetText.Line($"{radial:0.000} ±{band:0.000} mm all round{(fit.IsSealed ? ", sealed" : "")}"),
            Limit = SheetText.Line($"good to {limits.SpindleGood:0.00}, usable to {limits.SpindleUsable:0.00}, bushed anew from {limits.SpindleRebush:0.00} mm{Origin(limits)}"),
            KilogramsAnHour = air,
            Least = least,
            Most = most,
            Share = share,
            Words = Words(fit, grade, air, share),
        };
    }

    // least: the depression has pulled the spindle home, tight readings; most: the whole ring is open to it, wide readings
    private (double Air, double Least, double Most) Air(BushFit fit, double radial, double band)
    {
        double Half(double clearance, double eccentricity) => idle.Through(Gap(NarrowGap.HalfRound, fit, clearance, eccentricity));
        return fit.IsSealed ? (0, 0, Half(radial + band, 0)) : (Half(radial, 0), Half(Math.Max(0, radial - band), 1), idle.Through(Gap(NarrowGap.Round, fit, radial + band, 0)));
    }

    private static NarrowGap Gap(Func<double, double, double, double, NarrowGap> kind, BushFit fit, double clearance, double eccentricity) =>
        kind(fit.SpindleMillimetres * 1e-3, (fit.SpindleMillimetres + (2 * clearance)) * 1e-3, fit.LengthMillimetres * 1e-3, eccentricity);

    private static string Words(BushFit fit, WearGrade grade, double air, double share)
    {
        var does = fit.IsSealed ? "Its seal keeps air out as long as it is sound." : SheetText.Line($"Draws {air:0.00} kg/h at idle, {Percent * share:0.#} % of this barrel's idle air, which no jet has measured.");
        return grade switch
        {
            WearGrade.Good => does,
            WearGrade.Usable => $"{does} Usable.",
            WearGrade.Worn => $"{does} Worn: bush it while it is apart, or fit a seal.",
            _ => $"{does} Bush it anew: the plate also wanders by what the spindle can move.",
        };
    }

    private static string Origin(WearLimits limits)
    {
        var usual = new WearLimits();
        return limits.SpindleGood == usual.SpindleGood && limits.SpindleUsable == usual.SpindleUsable && limits.SpindleRebush == usual.SpindleRebush ? " (common practice)" : " (written in the sheet)";
    }
}
