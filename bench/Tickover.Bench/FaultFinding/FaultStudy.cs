using System.Globalization;
using Tickover.Workshop.FaultFinding;

namespace Tickover.Bench.FaultFinding;

/// <summary>Simulated cars put to the fault finder, beside the causes of the trade's table looked at straight down.</summary>
internal static class FaultStudy
{
    private const int Cases = 300, TwoFaultsEvery = 5;
    private const int Seed = 2026;
    private const int Most = 12;      // tests after which anybody would stop
    private const int Three = 3;

    private sealed record Outcome(bool Two, bool First, bool Among, bool All, bool Found, bool FoundWrong, int Tests, double Minutes, int Down, double DownMinutes, bool DownRight, int Whole, bool WholeRight);

    internal static int Run(string[] words)
    {
        var (cases, seed) = (Number(words, "--cases", Cases), Number(words, "--seed", Seed));
        var random = new Random(seed);
        var outcomes = Enumerable.Range(0, cases).Select(i => One(new SimulatedCar(random, i % TwoFaultsEvery == TwoFaultsEvery - 1 ? 2 : 1))).ToList();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{cases} cars, seed {seed}"));
        Console.WriteLine("| cars | number | a true cause first | among three | all true among three | a cause stands | a wrong one stands | tests, median | mean | minutes, mean | straight down to the first yes: right | tests, median | mean | minutes, mean | the whole row: right | tests, mean |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|");
        Line("all", outcomes);
        Line("one fault", [.. outcomes.Where(o => !o.Two)]);
        Line("two faults", [.. outcomes.Where(o => o.Two)]);
        return 0;
    }

    private static int Number(string[] words, string name, int usual)
    {
        var at = Array.IndexOf(words, name);
        return at >= 0 && at + 1 < words.Length ? int.Parse(words[at + 1], CultureInfo.InvariantCulture) : usual;
    }

    private static Outcome One(SimulatedCar car)
    {
        var knowledge = FaultKnowledge.Standard;
        var given = new FaultCase { Symptoms = car.Complaints };
        var outlook = FaultFinder.Weigh(knowledge, given);
        var minutes = 0.0;
        while (outlook.Next is { } next && given.Answers.Count < Most)
        {
            var answer = car.Answer(next.Test.Key, [.. next.Test.Answers.Select(a => a.Key)]);
            minutes += next.Test.Minutes;
            given = given.With(answer is null ? new FaultGiven(next.Test.Key, string.Empty, FaultCertainty.Unsure) : new FaultGiven(next.Test.Key, answer));
            outlook = FaultFinder.Weigh(knowledge, given);
        }

        var (down, downMinutes, right) = Down(car, knowledge);
        var (whole, wholeRight) = Whole(car);
        bool True(FaultRank r) => car.True.Contains(r.Cause.Key, StringComparer.Ordinal);
        return new Outcome(
            car.True.Count > 1, True(outlook.Ranking[0]), outlook.Ranking.Take(Three).Any(True), outlook.Ranking.Take(Three).Count(True) == car.True.Count,
            outlook.Standing == FaultStanding.Found, outlook.Found.Any(r => !True(r)), given.Answers.Count, minutes, down, downMinutes, right, whole, wholeRight);
    }

    // Each cause of the list looked at in turn until one is found; round again, once, where none was.
    private static (int Tests, double Minutes, bool Right) Down(SimulatedCar car, FaultKnowledge knowledge)
    {
        var causes = car.Complaints.SelectMany(c => SimulatedCar.Causes[c]).Distinct(StringComparer.Ordinal).ToList();
        var (tests, minutes) = (0, 0.0);
        foreach (var cause in causes.Concat(causes))
        {
            tests++;
            minutes += knowledge.Test("look-" + cause)!.Minutes;
            if (string.Equals(car.Answer("look-" + cause, ["yes", "no"]), "yes", StringComparison.Ordinal))
            {
                return (tests, minutes, car.True.Contains(cause, StringComparer.Ordinal));
            }
        }

        return (tests, minutes, false);
    }

    // Every cause of the list looked at once: right where the true ones were found and no other.
    private static (int Tests, bool Right) Whole(SimulatedCar car)
    {
        var causes = car.Complaints.SelectMany(c => SimulatedCar.Causes[c]).Distinct(StringComparer.Ordinal).ToList();
        var found = causes.Where(c => string.Equals(car.Answer("look-" + c, ["yes", "no"]), "yes", StringComparison.Ordinal)).ToList();
        return (causes.Count, found.Count == car.True.Count && found.All(f => car.True.Contains(f, StringComparer.Ordinal)));
    }

    private static void Line(string name, List<Outcome> of) => Console.WriteLine(string.Create(
        CultureInfo.InvariantCulture,
        $"| {name} | {of.Count} | {Part(of, o => o.First)} | {Part(of, o => o.Among)} | {Part(of, o => o.All)} | {Part(of, o => o.Found)} | {Part(of, o => o.FoundWrong)} | {Median(of, o => o.Tests)} | {of.Average(o => o.Tests):F2} | {of.Average(o => o.Minutes):F0} | {Part(of, o => o.DownRight)} | {Median(of, o => o.Down)} | {of.Average(o => o.Down):F2} | {of.Average(o => o.DownMinutes):F0} | {Part(of, o => o.WholeRight)} | {of.Average(o => o.Whole):F2} |"));

    private static string Part(List<Outcome> of, Func<Outcome, bool> which) => string.Create(CultureInfo.InvariantCulture, $"{100.0 * of.Count(which) / of.Count:F1} %");

    private static int Median(List<Outcome> of, Func<Outcome, int> what) => of.Select(what).Order().ElementAt(of.Count / 2);
}
