using Tickover.Reports;
using Tickover.Workshop.Mixture;

namespace Tickover.Web.Mixture;

/// <summary>The figures of a point as the pages write them.</summary>
internal static class PointFigures
{
    public static string Heading(PointWorking working) =>
        $"{Shown.SpeedWithUnit(working.SpeedRpm)}, {Shown.Opening(working.ThrottleDegrees)} of throttle";

    public static string Lambda(PointWorking working) =>
        ValidityWords.HasMixture(working.Point) ? Shown.Lambda(working.Point.Lambda) : Shown.Nothing;

    /// <summary>The band on λ: as wide a part of λ as the band on the ratio is of it.</summary>
    public static string Band(PointWorking working) => $"±{Shown.Lambda(working.Point.Lambda * working.RelativeBand)}";

    public static string Limits(PointWorking working) => Shown.Range(
        Shown.Lambda(working.Point.Lambda * (1 - working.RelativeBand)), Shown.Lambda(working.Point.Lambda * (1 + working.RelativeBand)));

    public static string Target(LambdaBand band) => Shown.Range(Shown.Lambda(band.Richest), Shown.Lambda(band.Leanest));

    /// <summary>Where λ lies against its target, in a word; the band decides between "is" and "may be".</summary>
    public static string Standing(PointWorking working)
    {
        if (!ValidityWords.HasMixture(working.Point))
        {
            return "";
        }

        var (lambda, band, target) = (working.Point.Lambda, working.RelativeBand, working.Target);
        return lambda > target.Leanest
            ? lambda * (1 - band) > target.Leanest ? "too lean" : "may be too lean"
            : lambda < target.Richest
                ? lambda * (1 + band) < target.Richest ? "too rich" : "may be too rich"
                : "within target";
    }

    /// <summary>The page of the equations that a reference such as "metering (3)" is about.</summary>
    public static string EquationPage(string reference)
    {
        var name = new string([.. reference.TakeWhile(c => c is '-' || char.IsAsciiLetter(c))]).ToLowerInvariant();
        return name.Length == 0 ? "/physics" : $"/physics/{name}";
    }
}
