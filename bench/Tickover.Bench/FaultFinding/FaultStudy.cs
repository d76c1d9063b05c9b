using System.Diagnostics;
using System.Globalization;
using Tickover.Workshop.FaultFinding;

namespace Tickover.Bench.FaultFinding;

/// <summary>Simulated cars put to the fault finder, beside reading the trade's table straight down.</summary>
internal static class FaultStudy
{
    private const int Most = 12;      // tests after which anybody would stop

    private sealed record Outcome(bool Two, bool First, bool Three, bool Found, int Tests, double Minutes, int Down, double DownMinutes, bool DownRight);

    internal static int Run(string[] words)
    {
        var cases = words is ["--cases", var n, ..] ? int.Parse(n, CultureInfo.InvariantCulture) : 300;
        var random = new Random(words is [.., "--seed", var s] ? int.Parse(s, CultureInfo.InvariantCulture) : 1);
        var outcomes = Enumerable.Range(0, cases).Select(i => One(new SimulatedCar(random, i % 5 == 4))).ToList();
        Line("all", outcomes);
        Line("one fault", [.. outcomes.Where(o => !o.Two)]);
        Line("two faults", [.. outcomes.Where(o => o.Two)]);
        return 0;
    }

    internal static int Time()
    {
        var knowledge = FaultKnowledge.Standard;
        var worst = 0.0;
        foreach (var symptom in knowledge.Symptoms)
        {
            var given = new FaultCase { Symptoms = [symptom.Key] };
            FaultFinder.Weigh(knowledge, given);
            var watch = Stopwatch.StartNew();
            FaultFinder.Weigh(knowledge, given);
            worst = Math.Max(worst, watch.Elapsed.TotalMilliseconds);
        }

        var three = new FaultCase { Symptoms = [.. knowledge.Symptoms.Skip(22).Take(3).Select(s => s.Key)] };
        FaultFinder.Weigh(knowledge, three);
        var clock = Stopwatch.StartNew();
        FaultFinder.Weigh(knowledge, three);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"an answer, one symptom: worst {worst:F1} ms; three symptoms: {clock.Elapsed.TotalMilliseconds:F1} ms"));
        return 0;
    }

    private static Outcome One(SimulatedCar car)
    {
        var knowledge = FaultKnowledge.Standard;
        var given = new FaultCase { Symptoms = car.Complaints };
        var outlook = FaultFinder.Weigh(knowledge, given);
        var minutes = 0.0;
        while (outlook.Next is { } next && given.Answers.Count < Most)
        {
            var answer = car.Answer(next.Test.Key);
            minutes += next.Test.Minutes;
            given = given with { Answers = [.. given.Answers, answer is null ? new FaultGiven(next.Test.Key, string.Empty, FaultCertainty.Unsure) : new FaultGiven(next.Test.Key, answer)] };
            outlook = FaultFinder.Weigh(knowledge, given);
        }

        var (down, downMinutes, right) = Down(car, knowledge);
        bool True(FaultRank r) => car.True.Contains(r.Cause.Key, StringComparer.Ordinal);
        return new Outcome(
            car.True.Count > 1, True(outlook.Ranking[0]), car.True.All(t => outlook.Ranking.Take(3).Any(r => string.Equals(r.Cause.Key, t, StringComparison.Ordinal))),
            outlook.Standing == FaultStanding.Found, given.Answers.Count, minutes, down, downMinutes, right);
    }

    // Each cause of the list looked at in turn until one is found; round again, at most twice, where none was.
    private static (int Tests, double Minutes, bool Right) Down(SimulatedCar car, FaultKnowledge knowledge)
    {
        var causes = car.Complaints.SelectMany(c => SimulatedCar.Causes[c]).Distinct(StringComparer.Ordinal).ToList();
        var (tests, minutes) = (0, 0.0);
        foreach (var cause in causes.Concat(causes))
        {
            tests++;
            minutes += knowledge.Test("look-" + cause)!.Minutes;
            if (string.Equals(car.Answer("look-" + cause), "yes", StringComparison.Ordinal))
            {
                return (tests, minutes, car.True.Contains(cause, StringComparer.Ordinal));
            }
        }

        return (tests, minutes, false);
    }

    private static void Line(string name, List<Outcome> of) => Console.WriteLine(string.Create(
        CultureInfo.InvariantCulture,
        $"| {name} | {of.Count} | {Part(of, o => o.First)} | {Part(of, o => o.Three)} | {Part(of, o => o.Found)} | {Median(of, o => o.Tests):0.#} | {of.Average(o => o.Tests):F2} | {of.Average(o => o.Minutes):F0} | {Part(of, o => o.DownRight)} | {Median(of, o => o.Down):0.#} | {of.Average(o => o.Down):F2} | {of.Average(o => o.DownMinutes):F0} |"));

    private static string Part(List<Outcome> of, Func<Outcome, bool> which) => string.Create(CultureInfo.InvariantCulture, $"{100.0 * of.Count(which) / of.Count:F1} %");

    private static double Median(List<Outcome> of, Func<Outcome, int> what) => of.Select(what).Order().ElementAt(of.Count / 2);
}
