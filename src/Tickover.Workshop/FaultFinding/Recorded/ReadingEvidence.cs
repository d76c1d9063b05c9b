using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.FaultFinding.Recorded;

/// <summary>Readings that speak for or against a cause: the last of each measure and place.</summary>
internal static class ReadingEvidence
{
    // Measure, the words that are chosen, and the cause they speak for; "-" before the cause: against it.
    private static readonly (string Measure, string[] Words, string Cause)[] Chosen =
    [
        ("vent", ["blocked", "partly blocked"], "vent-blocked"),
        ("vent", ["clear"], "-vent-blocked"),
        ("crossPipe", ["blocked", "partly blocked"], "crosspipe-blocked"),
        ("crossPipe", ["clear"], "-crosspipe-blocked"),
        ("fuelAppearance", ["water at the bottom"], "free-water"),
        ("fuelAppearance", ["rust or dirt"], "tank-pitting"),
        ("fuelAppearance", ["clear and bright"], "-free-water"),
        ("senderSweep", ["open somewhere"], "sender-open-circuit"),
        ("senderSweep", ["arm fouls"], "sender-arm-bent"),
        ("airLeak", ["base", "stub", "spindle", "take-off"], "air-leak-one"),
        ("airLeak", ["none"], "-air-leak-one"),
        ("floatLeak", ["bubbles"], "float-heavy"),
        ("floatLeak", ["no bubbles"], "-float-heavy"),
        ("passagesProved", ["one doubtful", "one blocked"], "idle-outlet-blocked"),
        ("passagesProved", ["all, by flow"], "-idle-outlet-blocked"),
        ("percolation", ["drip", "boil over"], "percolation"),
        ("percolation", ["dry"], "-percolation"),
        ("stopTouches", ["does not touch"], "rod-holds-plates"),
    ];

    // Measure and the cause that too high or too low a figure speaks for; a figure within its limits speaks against both.
    private static readonly (string Measure, string High, string Low)[] Judged =
    [
        ("leakDown", "weak-cylinder", ""),
        ("compression", "", "weak-cylinder"),
        ("needleHolds", "", "float-valve-leak"),
        ("fuelPressure", "fuel-pressure-high", "pump-weak"),
        ("fuelFlow", "", "pump-weak"),
        ("linkPlay", "balls-worn", ""),
        ("inletClearance", "", "inlet-valve-tight"),
        ("levelDifference", "tanks-not-level", ""),
        ("senderEarth", "sender-earth", ""),
        ("chargingVoltage", "", "volts-low"),
        ("lambdaFullLoad", "main-small", "main-large"),
        ("lambdaProgression", "idle-jets-small", ""),
    ];

    public static IEnumerable<FaultEvidence> Of(VisitRecord record)
    {
        foreach (var reading in Rounds.Valid(record.Readings).GroupBy(r => (r.Measure, r.Place)).Select(g => g.Last()))
        {
            if (MeasureCatalogue.Find(reading.Measure) is not { } measure)
            {
                continue;
            }

            foreach (var (cause, against) in Says(measure, reading, record.Workshop))
            {
                yield return new FaultEvidence { Cause = cause, Against = against, Words = $"{measure.Label}, {reading.Place.Words()}: {reading.Typed}" };
            }
        }
    }

    private static IEnumerable<(string Cause, bool Against)> Says(MeasureDefinition measure, Visits.Reading reading, WorkshopRecord workshop)
    {
        foreach (var (_, _, cause) in Chosen.Where(c => Same(c.Measure, measure.Key) && c.Words.Contains(reading.Typed.Trim(), StringComparer.OrdinalIgnoreCase)))
        {
            yield return (cause.TrimStart('-'), cause[0] == '-');
        }

        foreach (var (_, high, low) in Judged.Where(j => Same(j.Measure, measure.Key)))
        {
            var verdict = JudgedReading.Of(measure, reading, workshop).Verdict;
            foreach (var (cause, speaks) in new[] { (high, Verdict.High), (low, Verdict.Low) }.Where(c => c.Item1.Length > 0 && (verdict == c.Item2 || verdict == Verdict.Within)))
            {
                yield return (cause, verdict != speaks);
            }
        }
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.Ordinal);
}
