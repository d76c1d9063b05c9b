using Tickover.Physics.Inference;

namespace Tickover.Workshop.FaultFinding.Working;

/// <summary>The causes one case may have, and symptoms and tests in terms of them.</summary>
internal sealed class CaseNetwork
{
    private const int MostForThree = 12;     // above this two at once are weighed: sets grow with the cube

    private readonly Dictionary<string, int> _numbers;

    public CaseNetwork(FaultKnowledge knowledge, FaultCase given)
    {
        var symptoms = given.Symptoms.Concat(given.Record.Select(r => r.Symptom)).Distinct(StringComparer.Ordinal).Select(knowledge.Symptom).OfType<FaultSymptom>().ToList();
        Symptoms = symptoms;
        Causes =
        [
            .. symptoms.SelectMany(s => s.Causes.Keys).Distinct(StringComparer.Ordinal)
                .Except(given.RuledOut, StringComparer.Ordinal).Take(Belief.MostCauses).Select(c => knowledge.Causes[c]),
        ];
        _numbers = Causes.Select((c, i) => (c.Key, i)).ToDictionary(c => c.Key, c => c.i, StringComparer.Ordinal);
    }

    public IReadOnlyList<FaultSymptom> Symptoms { get; }

    public IReadOnlyList<FaultCause> Causes { get; }

    public Belief Before() => Belief.Before([.. Causes.Select(c => c.Learned)], Causes.Count <= MostForThree ? 3 : 2);

    public OutcomeModel Model(FaultSymptom symptom) => new NoisyOr(symptom.Leak, [.. Causes.Select(c => symptom.Causes.GetValueOrDefault(c.Key))]);

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
