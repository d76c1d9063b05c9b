using System.Globalization;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Visits.Cautions;

namespace Tickover.Workshop.FaultFinding.Reading;

/// <summary>Looks whether causes, symptoms and tests fit together.</summary>
internal static class FaultChecks
{
    public static void Check(FaultKnowledge knowledge, Faults faults)
    {
        foreach (var symptom in knowledge.Symptoms)
        {
            Known(knowledge, symptom.Causes.Keys, $"symptoms.{symptom.Key}", faults);
        }

        foreach (var test in knowledge.Tests)
        {
            Known(knowledge, test.Answers.SelectMany(a => a.Likelihood.Keys).Distinct(StringComparer.Ordinal), $"tests.{test.Key}", faults);
            Sums(test, faults);
            foreach (var other in test.Covers.Where(c => knowledge.Test(c) is null))
            {
                faults.Add($"tests.{test.Key}.covers", $"There is no test \"{other}\"", "the key of a test", Spelling.Nearest(other, knowledge.Tests.Select(t => t.Key)) is { } near ? $"Did you mean \"{near}\"?" : "Mend the key.");
            }

            if (test.Caution.Length > 0 && CautionCatalogue.All.All(c => !string.Equals(c.Key, test.Caution, StringComparison.Ordinal)))
            {
                faults.Add($"tests.{test.Key}.caution", $"There is no caution \"{test.Caution}\"", "a key of docs/cautions.md", "Mend the key.");
            }
        }
    }

    private static void Known(FaultKnowledge knowledge, IEnumerable<string> keys, string path, Faults faults)
    {
        foreach (var key in keys.Where(k => !knowledge.Causes.ContainsKey(k)))
        {
            faults.Add(path, $"There is no cause \"{key}\"", "the key of a cause", Spelling.Nearest(key, knowledge.Causes.Keys) is { } near ? $"Did you mean \"{near}\"?" : "Describe the cause first.");
        }
    }

    private static void Sums(FaultTest test, Faults faults)
    {
        One(test, "otherwise", test.Answers.Sum(a => a.Otherwise), faults);
        foreach (var cause in test.Answers.SelectMany(a => a.Likelihood.Keys).Distinct(StringComparer.Ordinal))
        {
            One(test, cause, test.Answers.Sum(a => a.Likelihood.GetValueOrDefault(cause)), faults);
        }

        if (test.IsSign && (test.Answers.Count != 2 || test.Answers.Any(a => a.Likelihood.Count != test.Answers[0].Likelihood.Count)))
        {
            faults.Add($"tests.{test.Key}", "A sign needs two answers that name the same causes", "the sign there, the sign not there", "Take \"sign\" out, or mend the answers.");
        }
    }

    private static void One(FaultTest test, string what, double sum, Faults faults)
    {
        if (Math.Abs(sum - 1) > FaultForm.SumSlack)
        {
            faults.Add($"tests.{test.Key}", string.Create(CultureInfo.InvariantCulture, $"The chances of \"{what}\" add up to {sum:0.###} over the answers"), "1", "Mend the chances, or name the cause at every answer.");
        }
    }
}
