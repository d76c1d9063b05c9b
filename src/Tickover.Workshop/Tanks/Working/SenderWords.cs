using Tickover.Physics.Gauges;

namespace Tickover.Workshop.Tanks.Working;

/// <summary>What sender and gauge come to, in words.</summary>
internal static class SenderWords
{
    private const double Explained = 2.5;  // misfit beyond which nothing listed explains the readings
    private const double Sure = 0.8;
    private const double Good = 0.0625;    // 1/16 of the scale, common practice at F
    private const double Worth = 0.01;
    private const double Volts = 14.4;

    public static IReadOnlyList<TankAdvice> Of(TankAnalysis a, GaugeFinder gauge)
    {
        if (a.Sender is not { } verdict)
        {
            return [];
        }

        var advice = new List<TankAdvice>
        {
            new("Ohms only with the tank shut", "Read ohms with the battery off, the sender's wire off and the tank closed. Never work live beside an open tank; keep the tablet outside the vapour zone.", true),
            Finding(verdict),
        };
        if (Needed(a) is { } needed)
        {
            advice.Add(needed);
        }

        if (verdict is { Advised: { } cure, Gauge: { } family })
        {
            advice.Add(Cure(verdict, cure, family, gauge));
        }

        return advice;
    }

    private static TankAdvice Finding(SenderVerdict verdict)
    {
        var d = verdict.Diagnosis;
        if (d.Misfit > Explained)
        {
            return new("No listed fault explains the readings", FormattableString.Invariant($"Even the best explanation misses them by {d.Misfit:0.0} times what is usual. Read again with the wire off; the sender may be of a family not listed, or have two faults."));
        }

        var (fault, probability, best) = d.Faults[0];
        var other = d.Faults.Count > 1 && d.Faults[1].Probability >= Worth ? FormattableString.Invariant($" Next: {SenderFaultWords.Name(d.Faults[1].Fault).ToLowerInvariant()}, {Percent(d.Faults[1].Probability)}.") : string.Empty;
        var families = best.Sender == best.Gauge ? $"Sender and gauge: {best.Sender.Key} Ω." : $"Sender {best.Sender.Key} Ω, gauge {best.Gauge.Key} Ω.";
        return new(SenderFaultWords.Name(fault), FormattableString.Invariant($"Probability {Percent(probability)}. {families}{other} {SenderFaultWords.Test(fault)}"));
    }

    private static TankAdvice? Needed(TankAnalysis a)
    {
        if (a.Sender!.Diagnosis.Faults[0].Probability >= Sure)
        {
            return null;
        }

        var readings = a.Set.Readings;
        var words = !readings.Any(r => r.Needle is not null) ? "Read the needle at the same fillings, a minute after switching on."
            : !readings.Any(r => r.Ohms is not null) ? "Read the ohms at the sender at the same fillings."
            : readings.Count < 4 ? "Read two fillings more, one of them near full."
            : "Put known resistors in place of the sender and read the needle.";
        return new("The reading that would decide", words);
    }

    private static TankAdvice Cure(SenderVerdict verdict, GaugeCure cure, SenderFamily family, GaugeFinder gauge)
    {
        var asItIs = verdict.Cures.First(c => c.Kind == GaugeCureKind.AsItIs);
        var range = FormattableString.Invariant($"E at {gauge.EmptyLitres:0} l and F at {gauge.FullLitres:0} l");
        var broken = verdict.Diagnosis.Faults[0] is { Fault: not (SenderFault.None or SenderFault.WrongFamily), Probability: > 0.5 };
        var first = broken ? "Mend the fault first and read again; on the readings as they are: " : string.Empty;
        if (cure.Kind == GaugeCureKind.AsItIs)
        {
            return new("Leave it as it is", FormattableString.Invariant($"{first}A gauge of {family.Key} Ω on this sender errs by {Percent(cure.RootMeanSquare)} of full on average over the scale, {Percent(Math.Abs(cure.Worst.Error))} at worst ({TankUnits.Litres(cure.Worst.VolumeCubicMetres):0} l), for {range}. No resistor or bend does clearly better.{Poor(cure)}"));
        }

        return new("The cure", FormattableString.Invariant($"{first}{What(cure)}{Watts(verdict, cure)}. Error over the scale then {Percent(cure.RootMeanSquare)} of full on average, {Percent(Math.Abs(cure.Worst.Error))} at worst ({TankUnits.Litres(cure.Worst.VolumeCubicMetres):0} l); as it is {Percent(asItIs.RootMeanSquare)}. For {range} on a gauge of {family.Key} Ω.{Poor(cure)}"));
    }

    /// <summary>What is done, such as "Fit 22 Ω in the wire to the sender".</summary>
    public static string What(GaugeCure cure)
    {
        return cure.Kind switch
        {
            GaugeCureKind.AsItIs => "Nothing",
            GaugeCureKind.Series => FormattableString.Invariant($"Fit {cure.SeriesOhms:0.#} Ω in the wire to the sender"),
            GaugeCureKind.Parallel => FormattableString.Invariant($"Fit {cure.ParallelOhms:0.#} Ω from the sender's terminal to earth"),
            GaugeCureKind.Both => FormattableString.Invariant($"Fit {cure.ParallelOhms:0.#} Ω from the sender's terminal to earth and {cure.SeriesOhms:0.#} Ω in the wire"),
            _ => FormattableString.Invariant($"Bend the arm by {Math.Abs(double.RadiansToDegrees(cure.BendRadians)):0.0}° so that the wiper stands further towards {(cure.BendRadians > 0 ? "full" : "empty")} at the same fuel"),
        };
    }

    // Twice what it gets at most, in whole watts.
    private static string Watts(SenderVerdict verdict, GaugeCure cure)
    {
        var curve = verdict.Curve!.Curve;
        var heat = cure.HeatWatts(Volts, Math.Max(0, Math.Min(curve.At(curve.First), curve.At(curve.Last))));
        return heat > 0 ? FormattableString.Invariant($", able to stand {Math.Ceiling(2 * heat):0} W") : string.Empty;
    }

    private static string Poor(GaugeCure cure) => cure.RootMeanSquare > Good ? " That is still too much to go by: fit a sender of the gauge's family, or keep the table in the car." : string.Empty;

    private static string Percent(double part) => FormattableString.Invariant($"{100 * part:0} %");
}
