namespace Tickover.Bench.FaultFinding;

/// <summary>A car with one or two faults, and how it and its mechanic answer. It knows nothing of the finder's chances and shares no code with it.</summary>
internal sealed class SimulatedCar
{
    private const double WrongAnswer = 0.05, UnsureAnswer = 0.1;
    private const double LeastClear = 0.75;                     // a car shows what the table says in three of four tests to all of them
    private const double PlainSeen = 0.95, PlainErrs = 0.03;    // a look at the part itself, with the part in sight
    private const double HardSeen = 0.85, HardErrs = 0.07;      // the same by ear, on the road, by trial
    private const double PassesFor = 0.6;                       // a cause that looks like the one looked for
    private const double OtherWayRound = 0.3;                   // the first two causes of the table change places in this car's part of the world
    private const double SameComplaint = 0.5;                   // of two faults, the second hides behind the first's complaint

    private readonly Random _random;
    private readonly double _clear;

    public SimulatedCar(Random random, int faults)
    {
        _random = random;
        _clear = LeastClear + (1 - LeastClear) * random.NextDouble();
        var (complaint, causes) = Drawn();
        Complaints = [complaint];
        True = [Cause(causes)];
        if (faults > 1)
        {
            var (other, others) = _random.NextDouble() < SameComplaint ? (complaint, causes) : Drawn();
            Complaints = [.. new[] { complaint, other }.Distinct(StringComparer.Ordinal)];
            True = [True[0], Cause([.. others.Where(c => !string.Equals(c, True[0], StringComparison.Ordinal))])];
        }
    }

    public static IReadOnlyDictionary<string, string[]> Causes { get; } = Words(CarComplaints.Rows).ToDictionary(w => w[0], w => w[1..], StringComparer.Ordinal);

    public IReadOnlyList<string> Complaints { get; }

    public IReadOnlyList<string> True { get; }

    private static Dictionary<string, (string Sound, ILookup<string, string> Shown)> Tests { get; } = Words(CarShows.Rows).ToDictionary(
        w => w[0],
        w => (w[1][1..], w[2..].Select(p => p.Split('=')).SelectMany(p => p[1].Split(',').Select(a => (Cause: p[0], Answer: a))).ToLookup(p => p.Cause, p => p.Answer, StringComparer.Ordinal)),
        StringComparer.Ordinal);

    private static HashSet<string> Hard { get; } = [.. CarShows.HardToTell.Split(' ')];

    private static Dictionary<string, string[]> Alike { get; } = Words(CarShows.PassFor).ToDictionary(w => w[0], w => w[1..], StringComparer.Ordinal);

    /// <summary>What the mechanic says; null where they cannot tell.</summary>
    /// <param name="test">The test.</param>
    /// <param name="answers">What may be said to it.</param>
    public string? Answer(string test, IReadOnlyList<string> answers)
    {
        if (_random.NextDouble() < UnsureAnswer)
        {
            return null;
        }

        var seen = test.StartsWith("look-", StringComparison.Ordinal) ? Look(test["look-".Length..]) ? "yes" : "no" : Shows(test, answers);
        return _random.NextDouble() < WrongAnswer ? Any([.. answers.Where(a => !string.Equals(a, seen, StringComparison.Ordinal))]) : seen;
    }

    private bool Look(string cause)
    {
        var (sees, errs) = Hard.Contains(cause) ? (HardSeen, HardErrs) : (PlainSeen, PlainErrs);
        var chance = True.Contains(cause, StringComparer.Ordinal) ? sees : Alike.TryGetValue(cause, out var alike) && alike.Any(a => True.Contains(a, StringComparer.Ordinal)) ? PassesFor : errs;
        return _random.NextDouble() < chance;
    }

    private string Shows(string test, IReadOnlyList<string> answers)
    {
        var (sound, shown) = Tests[test];
        var all = True.SelectMany(c => shown[c]).ToArray();
        return _random.NextDouble() > _clear ? Any([.. answers]) : all.Length > 0 ? Any(all) : sound;
    }

    private (string Complaint, string[] Causes) Drawn()
    {
        var complaint = Any([.. Causes.Keys]);
        var causes = Causes[complaint].ToArray();
        if (_random.NextDouble() < OtherWayRound)
        {
            (causes[0], causes[1]) = (causes[1], causes[0]);
        }

        return (complaint, causes);
    }

    // By place: a half as often as the first, a third as often, and so on.
    private string Cause(string[] causes)
    {
        var parts = causes.Select((_, i) => 1.0 / (i + 1)).ToArray();
        var at = _random.NextDouble() * parts.Sum();
        var i = 0;
        while (i < causes.Length - 1 && at >= parts[i])
        {
            at -= parts[i++];
        }

        return causes[i];
    }

    private string Any(string[] of) => of[_random.Next(of.Length)];

    private static IEnumerable<string[]> Words(string rows) => rows.Split('\n').Select(r => r.Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
