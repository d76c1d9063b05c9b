namespace Tickover.Physics.Gauges;

/// <summary>Which families and which fault explain the readings, and how surely. docs/physics/gauges.md (8) to (11).</summary>
public sealed record SenderDiagnosis
{
    private const double Stray = 0.03;            // part of readings that are plain wrong
    private const double StrayOhms = 1.0 / 500;   // per Ω, over what a meter's range shows
    private const double StrayNeedle = 1.0 / 1.2; // per scale
    private const double FamilyPart = 0.05;       // of the span: makers differ
    private const double MeterOhms = 1;
    private const double NeedleDeviation = 0.05;
    private const double ThermalDeviation = 0.08;
    private const double Independent = 6;         // readings of one sender share their errors

    /// <summary>Faults, the likeliest first, each with its probability and the best case of it.</summary>
    public required IReadOnlyList<(SenderFault Fault, double Probability, SenderCase Best)> Faults { get; init; }

    /// <summary>Families the sender may be of, the likeliest first.</summary>
    public required IReadOnlyList<(SenderFamily Family, double Probability)> Senders { get; init; }

    /// <summary>Families the gauge may be of, the likeliest first.</summary>
    public required IReadOnlyList<(SenderFamily Family, double Probability)> Gauges { get; init; }

    /// <summary>Root mean square of readings less the best case, in their own deviations; above some 2.5 nothing listed explains them.</summary>
    public required double Misfit { get; init; }

    /// <summary>Weighs the cases against the readings.</summary>
    /// <param name="survey">What is known.</param>
    /// <returns>The diagnosis.</returns>
    /// <exception cref="ArgumentException">No reading has ohms or needle.</exception>
    public static SenderDiagnosis Of(SenderSurvey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        var count = survey.Readings.Count(r => r.Ohms is not null || r.Needle is not null);
        if (count == 0)
        {
            throw new ArgumentException("At least one reading has ohms or the needle.", nameof(survey));
        }

        var temper = Math.Min(1, Independent / count); // gauges (10)
        var weighed = SenderCases.All(survey.Sender, survey.Gauge)
            .Select(c => (c.Case, Log: Math.Log(c.Share) + temper * LogLikelihood(c.Case, survey))).ToArray();
        var top = weighed.Max(w => w.Log);
        var total = weighed.Sum(w => Math.Exp(w.Log - top));
        var cases = weighed.Select(w => (w.Case, Probability: Math.Exp(w.Log - top) / total)).OrderByDescending(w => w.Probability).ToArray(); // gauges (8)
        return new SenderDiagnosis
        {
            Faults = [.. cases.GroupBy(c => c.Case.Fault).Select(g => (g.Key, Probability: g.Sum(c => c.Probability), g.First().Case)).OrderByDescending(f => f.Probability)],
            Senders = [.. cases.GroupBy(c => c.Case.Sender).Select(g => (g.Key, Probability: g.Sum(c => c.Probability))).OrderByDescending(f => f.Probability)],
            Gauges = [.. cases.GroupBy(c => c.Case.Gauge).Select(g => (g.Key, Probability: g.Sum(c => c.Probability))).OrderByDescending(f => f.Probability)],
            Misfit = MisfitOf(cases[0].Case, survey),
        };
    }

    private static double LogLikelihood(SenderCase of, SenderSurvey survey)
    {
        var sum = 0.0;
        foreach (var reading in survey.Readings)
        {
            var travel = survey.Travel(reading.VolumeCubicMetres);
            if (reading.Ohms is { } ohms)
            {
                sum += Math.Log(OhmsDensity(ohms, of.OhmsAt(travel), OhmsDeviation(of, survey)));
            }

            if (reading.Needle is { } needle)
            {
                sum += Math.Log(Mixed(needle - of.NeedleAt(travel), NeedleSpread(of, survey), StrayNeedle));
            }
        }

        return sum;
    }

    private static double OhmsDeviation(SenderCase of, SenderSurvey survey)
    {
        // A float that does not move is sure of where it is, whatever the fuel does; a short is none of the family's business.
        var travel = of.Fault is SenderFault.StuckFloat ? 0 : survey.TravelDeviation;
        var own = of is { Fault: SenderFault.Short, InWire: false } ? 0 : of.Sender.SpanOhms * Math.Sqrt(FamilyPart * FamilyPart + travel * travel);
        return Math.Sqrt(own * own + MeterOhms * MeterOhms); // gauges (9)
    }

    private static double NeedleSpread(SenderCase of, SenderSurvey survey)
    {
        var own = of.Gauge.Thermal ? ThermalDeviation : NeedleDeviation;
        var still = of.Fault is SenderFault.StuckNeedle or SenderFault.StuckFloat or SenderFault.Open or SenderFault.Short;
        return still ? own : Math.Sqrt(own * own + survey.TravelDeviation * survey.TravelDeviation);
    }

    private static double OhmsDensity(double read, double expected, double deviation) =>
        double.IsInfinity(read) || double.IsInfinity(expected)
            ? double.IsInfinity(read) && double.IsInfinity(expected) ? 1 : Stray * StrayOhms
            : Mixed(read - expected, deviation, StrayOhms);

    private static double Mixed(double off, double deviation, double stray) =>
        (1 - Stray) * Math.Exp(-off * off / (2 * deviation * deviation)) / (deviation * Math.Sqrt(2 * Math.PI)) + Stray * stray; // gauges (9)

    private static double MisfitOf(SenderCase of, SenderSurvey survey)
    {
        var off = new List<double>();
        foreach (var reading in survey.Readings)
        {
            var travel = survey.Travel(reading.VolumeCubicMetres);
            if (reading.Ohms is { } ohms)
            {
                var expected = of.OhmsAt(travel);
                off.Add(double.IsInfinity(ohms) || double.IsInfinity(expected) ? ohms.Equals(expected) ? 0 : 10 : (ohms - expected) / OhmsDeviation(of, survey));
            }

            if (reading.Needle is { } needle)
            {
                off.Add((needle - of.NeedleAt(travel)) / NeedleSpread(of, survey));
            }
        }

        return Math.Sqrt(off.Average(o => o * o)); // gauges (11)
    }
}
