using System.Globalization;
using Tickover.Physics.Inference;
using Tickover.Workshop.FaultFinding.Working;

namespace Tickover.Workshop.FaultFinding;

/// <summary>Ranks the causes of a case and says what to look at next. docs/fault-finder.md.</summary>
public static class FaultFinder
{
    /// <summary>Probability from which a cause stands.</summary>
    public const double Stands = 0.85;

    /// <summary>How often an answer given for sure is wrong; common practice.</summary>
    public const double WrongWhenSure = 0.04;

    private const double WrongWhenLeaning = 0.3;
    private const double WrongInRecord = 0.1;
    private const double Surprising = 0.06;     // an answer held this improbable beforehand is spoken of

    /// <summary>Weighs a case.</summary>
    /// <param name="knowledge">Causes, symptoms and tests.</param>
    /// <param name="given">The case; keys that the knowledge does not hold are passed over.</param>
    /// <returns>Ranking, next test and contradictions.</returns>
    /// <exception cref="ArgumentException">The case has no symptom that is known.</exception>
    public static FaultOutlook Weigh(FaultKnowledge knowledge, FaultCase given)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        ArgumentNullException.ThrowIfNull(given);
        var network = new CaseNetwork(knowledge, given);
        if (network.Symptoms.Count == 0)
        {
            throw new ArgumentException("the case has no symptom that the knowledge holds", nameof(given));
        }

        var start = Start(network, given);
        var (belief, odd) = Answered(knowledge, given, network, start);
        FaultRank[] ranking =
        [
            .. network.Causes.Select((c, i) => new FaultRank(c, belief.Of(i), start.Of(i))).OrderByDescending(r => r.Probability).ThenBy(r => r.Cause.Key, StringComparer.Ordinal),
        ];
        var stand = ranking.TakeWhile(r => r.Probability >= Stands).ToList();
        FaultSymptom[] unexplained = [.. network.Stated.Where(s => !stand.Exists(r => s.Causes.ContainsKey(r.Cause.Key)))];
        var next = unexplained.Length == 0 ? null : new NextTest(knowledge, given, network, belief).Choose();
        return new FaultOutlook
        {
            Standing = unexplained.Length == 0 ? FaultStanding.Found : next is null ? FaultStanding.Exhausted : FaultStanding.Open,
            Ranking = ranking,
            Other = belief.None,
            Several = belief.SeveralAtOnce(),
            OpenBits = belief.EntropyBits,
            Next = next,
            Contradictions = [.. Twice(knowledge, given), .. AllRuledOut(network), .. odd],
            Unexplained = unexplained,
        };
    }

    private static Belief Start(CaseNetwork network, FaultCase given)
    {
        var belief = network.Stated.Aggregate(network.Before(), (b, symptom) => b.After(network.Model(symptom), NoisyOr.Present, default).Belief);
        belief = network.Recorded.Aggregate(belief, (b, symptom) => b.After(network.Model(symptom), NoisyOr.Present, new Telling(WrongInRecord, 0)).Belief);
        foreach (var evidence in given.Record)
        {
            if (network.Model(evidence) is { } model)
            {
                belief = belief.After(model, evidence.Against ? 1 - NoisyOr.Present : NoisyOr.Present, default).Belief;
            }
        }

        return belief;
    }

    private static (Belief Belief, IReadOnlyList<string> Odd) Answered(FaultKnowledge knowledge, FaultCase given, CaseNetwork network, Belief start)
    {
        var (belief, odd) = (start, new List<string>());
        foreach (var answer in given.Answers.Where(a => a.Certainty != FaultCertainty.Unsure))
        {
            if (knowledge.Test(answer.Test) is not { } test || test.Number(answer.Answer) is not { } number)
            {
                continue;
            }

            var after = belief.After(network.Model(test), number, new Telling(answer.Certainty == FaultCertainty.Sure ? WrongWhenSure : WrongWhenLeaning, 0));
            if (after.Chance < Surprising)
            {
                odd.Add(string.Create(CultureInfo.InvariantCulture, $"\"{test.Question}\" – \"{test.Answers[number].Words}\" goes against what was said before: by that it had a chance of {after.Chance * 100:0.#} %. Look again at both."));
            }

            belief = after.Belief;
        }

        return (belief, odd);
    }

    private static IEnumerable<string> Twice(FaultKnowledge knowledge, FaultCase given) =>
        given.Answers.Where(a => a.Certainty == FaultCertainty.Sure).GroupBy(a => a.Test, StringComparer.Ordinal)
            .Where(g => g.Select(a => a.Answer).Distinct(StringComparer.Ordinal).Count() > 1)
            .Select(g => $"\"{knowledge.Test(g.Key)?.Question ?? g.Key}\" was answered in two ways: {string.Join(", ", g.Select(a => a.Answer).Distinct(StringComparer.Ordinal))}. Look again, and keep one.");

    private static IEnumerable<string> AllRuledOut(CaseNetwork network) =>
        network.Stated.Where(s => s.Causes.Keys.All(network.IsRuledOut))
            .Select(s => $"Every cause known for \"{s.Words}\" has been ruled out. Either one was ruled out too soon, or it is something this table does not hold.");
}
