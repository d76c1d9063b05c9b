using System.Globalization;
using Tickover.Physics;

namespace Tickover.Workshop.Exhaust;

/// <summary>Finds what is wrong with a sample, in words.</summary>
internal static class GasFaults
{
    private static readonly Func<GasAccount, GasFault?>[] Questions =
        [NotZeroed, ImpossibleSum, Misfire, Diluted, LeanOrLeak, HighHydrocarbons, OutsideFormula, LambdaDisagrees, InTenths];

    internal static IReadOnlyList<GasFault> Of(GasAccount account) =>
        [.. Questions.Select(ask => ask(account)).OfType<GasFault>().OrderByDescending(fault => fault.Leaves)];

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static GasFault? InTenths(GasAccount account) => account.Reading.DioxideWasInTenths
        ? new(
            GasFaultKind.DioxideInTenths,
            Say($"CO₂ came as {account.Reading.CarbonDioxidePercent * 10:0.###}: taken for tenths of a per cent, {account.Reading.CarbonDioxidePercent:0.##} %."),
            "See that the display says so; write it in per cent.")
        : null;

    private static GasFault? NotZeroed(GasAccount account)
    {
        var r = account.Reading;
        string[] below =
        [
            r.OxygenPercent < GasThresholds.OxygenZero ? Say($"O₂ {r.OxygenPercent:0.##} %") : "",
            r.CarbonMonoxidePercent < GasThresholds.MonoxideZero ? Say($"CO {r.CarbonMonoxidePercent:0.##} %") : "",
            r.HydrocarbonsPpm < GasThresholds.HydrocarbonsZero ? Say($"HC {r.HydrocarbonsPpm:0} ppm") : "",
        ];
        var said = string.Join(", ", below.Where(part => part.Length > 0));
        return said.Length == 0 ? null : new(
            GasFaultKind.NotZeroed,
            $"{said}: further below zero than a zero wanders.",
            "Probe out, purge with clean air, zero the analyser, see 20.9 % of O₂ in air, then read again.");
    }

    private static GasFault? ImpossibleSum(GasAccount account)
    {
        var off = account.DryTotalPercent - 100;
        if (Math.Abs(off) <= GasThresholds.SumOff)
        {
            return null;
        }

        var dioxide = account.Reading.CarbonDioxidePercent - off / GasThresholds.SumPerDioxide;
        var instead = dioxide > 0 ? Say($" With the other three, CO₂ would have to be about {dioxide:0.0} %.") : "";
        return new(
            GasFaultKind.ImpossibleSum,
            Say($"The gases do not belong together: with their nitrogen they make {account.DryTotalPercent:0} % instead of 100.") + instead,
            $"Check zero and span of CO₂ and O₂, whether all four were read at the same moment, and whether the fuel is {account.FuelName}.");
    }

    private static bool IsMisfire(GasReading r) =>
        r.HydrocarbonsPpm >= GasThresholds.MisfireHydrocarbons
        && r.OxygenPercent >= GasThresholds.MisfireOxygen
        && r.HydrocarbonsPpm - GasThresholds.UsualHydrocarbons
            >= GasThresholds.MisfirePpmPerOxygen * (r.OxygenPercent - GasThresholds.UsualOxygen);

    private static GasFault? Misfire(GasAccount account)
    {
        var r = account.Reading;
        return IsMisfire(r)
            ? new(
                GasFaultKind.Misfire,
                Say($"HC {r.HydrocarbonsPpm:0} ppm with O₂ {r.OxygenPercent:0.0#} %: charges pass unburnt. λ then reads leaner than the mixture is."),
                "Plugs, leads, points, coil and compression first, cylinder by cylinder; a mixture too lean to fire shows alike and goes with a touch of choke.")
            : null;
    }

    private static bool RichAndDiluted(GasAccount account) =>
        account.AirPercent >= GasThresholds.AirShare && account.Reading.OxygenPercent >= GasThresholds.RaisedOxygen;

    private static bool TooLeanToRun(GasAccount account) =>
        account.Lambda > GasThresholds.LeanestSmooth && account.Reading.OxygenPercent >= GasThresholds.RaisedOxygen;

    private static GasFault? Diluted(GasAccount account)
    {
        if (IsMisfire(account.Reading) || (!RichAndDiluted(account) && !TooLeanToRun(account)))
        {
            return null;
        }

        var r = account.Reading;
        var sum = Say($"CO + CO₂ {r.CarbonSumPercent:0.0} % with O₂ {r.OxygenPercent:0.0#} %: ");
        var words = RichAndDiluted(account)
            ? Say($"some {account.AirPercent:0} % of the sample is air. CO against CO₂ says λ {account.UndilutedLambda:0.00} before it came in.")
            : Say($"no carburetted engine runs smoothly at λ {account.Lambda:0.00}; air gets in.");
        return new(
            GasFaultKind.DilutedSample,
            sum + words,
            "Probe 40 cm in, hose and water trap tight, exhaust joints sealed; then read again, and at 2,500 rpm, where a leak counts less. A lean barrel beside rich ones looks the same from one tail pipe: read each bank.");
    }

    private static GasFault? LeanOrLeak(GasAccount account)
    {
        var r = account.Reading;
        var ask = account.Lambda > GasThresholds.Lean && r.OxygenPercent >= GasThresholds.RaisedOxygen && !GasThresholds.MonoxideTells(r);
        return ask && !IsMisfire(r) && !TooLeanToRun(account)
            ? new(
                GasFaultKind.LeanOrLeak,
                Say($"λ {account.Lambda:0.00} with CO {r.CarbonMonoxidePercent:0.0#} %: a lean mixture, or air behind the engine. These gases cannot tell."),
                "Read at idle and at 2,500 rpm: less O₂ at speed means a leak. Then enrich with a touch of choke: CO that rises at once means lean.")
            : null;
    }

    private static GasFault? HighHydrocarbons(GasAccount account)
    {
        var r = account.Reading;
        return r.HydrocarbonsPpm >= GasThresholds.HighHydrocarbons && !IsMisfire(r)
            ? new(
                GasFaultKind.HighHydrocarbons,
                Say($"HC {r.HydrocarbonsPpm:0} ppm without the O₂ of a misfire ({r.OxygenPercent:0.0#} %)."),
                "See what hangs in the hose (read with the probe in air), oil burnt, a cold engine, a mixture too rich to burn out.")
            : null;
    }

    private static GasFault? OutsideFormula(GasAccount account) => account.Validity.Kind == ValidityKind.Inside
        ? null
        : new(
            GasFaultKind.OutsideFormula,
            Say($"λ {account.Lambda:0.00} lies beyond the {account.Validity.Minimum:0.0#} to {account.Validity.Maximum:0.0#} the formula is stated for."),
            "Take it for very rich or very lean, not for a number.");

    private static GasFault? LambdaDisagrees(GasAccount account)
    {
        var r = account.Reading;
        if (r.LambdaShown is not { } shown || Math.Abs(shown - account.LambdaOfRegulation) <= GasThresholds.LambdaOff + r.LambdaStep / 2)
        {
            return null;
        }

        return new(
            GasFaultKind.LambdaDisagrees,
            Say($"The instrument shows λ {shown:0.0##}, its gases make {account.LambdaOfRegulation:0.000}."),
            "Check that all were read at the same moment, that no two columns are swapped, and which fuel the instrument is set to.");
    }
}
