using Tickover.Physics.Inference;

namespace Tickover.Workshop.FaultFinding.Working;

/// <summary>The causes one case may have, and symptoms, tests and the record in terms of them.</summary>
internal sealed class CaseNetwork
{
    private const int MostForThree = 12;     // above this two at once are weighed: sets grow with the cube
    private const double Unmeant = 0.1;      // how often the record shows a thing though it is no trouble, or misses it
    private const double Shown = 0.75;

    private readonly Dictionary<string, int> _numbers;
    private readonly HashSet<string> _ruledOut;

    public CaseNetwork(FaultKnowledge knowledge, FaultCase given)
    {
        Stated = [.. given.Symptoms.Distinct(StringComparer.Ordinal).Select(knowledge.Symptom).OfType<FaultSymptom>()];
        Recorded = [.. given.Record.Select(r => r.Symptom).Distinct(StringComparer.Ordinal).Except(given.Symptoms, StringComparer.Ordinal).Select(knowledge.Symptom).OfType<FaultSymptom>()];
        _ruledOut = given.RuledOut.ToHashSet(StringComparer.Ordinal);
        Causes =
        [
            .. Symptoms.SelectMany(s => s.Causes.Keys).Distinct(StringComparer.Ordinal)
                .Where(c => !IsRuledOut(c)).Take(Belief.MostCauses).Select(c => knowledge.Causes[c]),
        ];
        _numbers = Causes.Select((c, i) => (c.Key, i)).ToDictionary(c => c.Key, c => c.i, StringComparer.Ordinal);
    }

    /// <summary>What was told.</summary>
    public IReadOnlyList<FaultSymptom> Stated { get; }

    /// <summary>What only the record shows.</summary>
    public IReadOnlyList<FaultSymptom> Recorded { get; }

    public IReadOnlyList<FaultSymptom> Symptoms => [.. Stated, .. Recorded];

    public IReadOnlyList<FaultCause> Causes { get; }

    public bool IsRuledOut(string cause) => _ruledOut.Contains(cause);

    public Belief Before() => Belief.Before([.. Causes.Select(c => c.Learned)], Causes.Count <= MostForThree ? 3 : 2);

    public OutcomeModel Model(FaultSymptom symptom) => new NoisyOr(symptom.Leak, [.. Causes.Select(c => symptom.Causes.GetValueOrDefault(c.Key))]);

    /// <summary>What the record says of a cause; null where the case cannot have it.</summary>
    public OutcomeModel? Model(FaultEvidence evidence) => _numbers.TryGetValue(evidence.Cause, out var number)
        ? new NoisyOr(Unmeant, [.. Causes.Select((_, i) => i == number ? Shown : 0)])
        : null;

    public OutcomeModel Model(FaultTest test)
    {
        if (test.IsSign)
        {
            return new NoisyOr(test.Answers[0].Otherwise, [.. Causes.Select(c => test.Answers[0].Likelihood.GetValueOrDefault(c.Key))]);
        }

        var spoken = test.Causes.ToHashSet(StringComparer.Ordinal);
        return new SharedOutcome(
            Whole(test.Answers.Select(a => a.Otherwise)),
            [.. Causes.Select(c => spoken.Contains(c.Key) ? Whole(test.Answers.Select(a => a.Likelihood.GetValueOrDefault(c.Key))) : null)]);
    }

    public IEnumerable<int> SpokenOf(FaultTest test) => test.Causes.Where(_numbers.ContainsKey).Select(c => _numbers[c]);

    private static double[] Whole(IEnumerable<double> chances)
    {
        var all = chances.ToArray();
        var sum = all.Sum();
        return [.. all.Select(c => c / sum)];
    }
}
