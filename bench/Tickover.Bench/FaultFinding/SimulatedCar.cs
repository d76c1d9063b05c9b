namespace Tickover.Bench.FaultFinding;

/// <summary>A car with one or two faults, and how it and its mechanic answer. It knows nothing of the finder's chances.</summary>
internal sealed class SimulatedCar
{
    private const double WrongAnswer = 0.05, UnsureAnswer = 0.1;
    private const double LeastClear = 0.75;      // a car shows what the table says in three of four tests to all of them
    private const double LookSees = 0.93;        // a look at the faulty part itself finds the fault
    private const double LookErrs = 0.04;        // and at a sound part finds one

    private readonly Random _random;
    private readonly double _clear;

    public SimulatedCar(Random random, bool two)
    {
        _random = random;
        _clear = LeastClear + (1 - LeastClear) * random.NextDouble();
        var (complaint, causes) = Drawn();
        Complaints = [complaint];
        True = [Cause(causes)];
        if (two)
        {
            var (other, others) = _random.NextDouble() < 0.5 ? (complaint, causes) : Drawn();
            Complaints = [.. new[] { complaint, other }.Distinct(StringComparer.Ordinal)];
            True = [.. new[] { True[0], Cause(others) }.Distinct(StringComparer.Ordinal)];
        }
    }

    public static IReadOnlyDictionary<string, string[]> Causes { get; } = RoughTables.Complaints.Split('\n').Select(l => l.Split(": ")).ToDictionary(l => l[0].Trim(), l => l[1].Split(' '), StringComparer.Ordinal);

    private static IReadOnlyDictionary<string, (string[] Answers, ILookup<string, string> ByCause)> Tests { get; } = RoughTables.Tests.Split('\n').Select(l => l.Split(" | ")).ToDictionary(
        l => l[0].Trim(), l => (l[1].Split(' '), l[2].Split(' ').Select(p => p.Split('=')).ToLookup(p => p[0], p => p[1], StringComparer.Ordinal)), StringComparer.Ordinal);

    public IReadOnlyList<string> Complaints { get; }

    public IReadOnlyList<string> True { get; }

    /// <summary>What the mechanic says; null where they cannot tell.</summary>
    public string? Answer(string test)
    {
        if (_random.NextDouble() < UnsureAnswer)
        {
            return null;
        }

        if (test.StartsWith("look-", StringComparison.Ordinal))
        {
            var there = _random.NextDouble() < (True.Contains(test[5..], StringComparer.Ordinal) ? LookSees : LookErrs);
            return there != (_random.NextDouble() < WrongAnswer) ? "yes" : "no";
        }

        var (answers, byCause) = Tests[test];
        var shown = True.SelectMany(c => byCause[c]).ToArray();
        var seen = _random.NextDouble() > _clear ? Any(answers) : shown.Length > 0 ? Any(shown) : answers[^1];
        return _random.NextDouble() < WrongAnswer ? Any(answers) : seen;
    }

    private (string Complaint, string[] Causes) Drawn()
    {
        var complaint = Any([.. Causes.Keys]);
        var causes = Causes[complaint].ToArray();
        if (_random.NextDouble() < 0.3)
        {
            // In three cars of ten the trade's first and second cause come the other way round.
            (causes[0], causes[1]) = (causes[1], causes[0]);
        }

        return (complaint, causes);
    }

    // Four, three, two, one, one: rough parts by place.
    private string Cause(string[] causes)
    {
        var parts = causes.Select((_, i) => Math.Max(1, 4 - i)).ToArray();
        var at = _random.Next(parts.Sum());
        var i = 0;
        while (at >= parts[i])
        {
            at -= parts[i++];
        }

        return causes[i];
    }

    private string Any(string[] of) => of[_random.Next(of.Length)];
}
