using System.Diagnostics;
using System.Globalization;
using Tickover.Workshop.FaultFinding;

namespace Tickover.Bench.FaultFinding;

/// <summary>How long an answer of the fault finder takes.</summary>
internal static class FaultTime
{
    private const int Repeats = 20;

    internal static int Run()
    {
        var watch = Stopwatch.StartNew();
        var knowledge = FaultKnowledge.Standard;
        var reading = watch.Elapsed.TotalMilliseconds;
        watch.Restart();
        FaultFinder.Weigh(knowledge, new FaultCase { Symptoms = [knowledge.Symptoms[0].Key] });
        var first = watch.Elapsed.TotalMilliseconds;
        var one = knowledge.Symptoms.Select(s => Median(knowledge, [s.Key])).ToList();
        var three = Enumerable.Range(0, knowledge.Symptoms.Count - 2).Select(i => Median(knowledge, [.. knowledge.Symptoms.Skip(i).Take(3).Select(s => s.Key)])).ToList();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"table read {reading:F0} ms (once); the very first answer {first:F0} ms; one symptom: median {one.Order().ElementAt(one.Count / 2):F1} ms, worst {one.Max():F1} ms; three symptoms: median {three.Order().ElementAt(three.Count / 2):F1} ms, worst {three.Max():F1} ms"));
        return 0;
    }

    private static double Median(FaultKnowledge knowledge, string[] symptoms)
    {
        var given = new FaultCase { Symptoms = symptoms };
        return Enumerable.Range(0, Repeats).Select(_ =>
        {
            var watch = Stopwatch.StartNew();
            FaultFinder.Weigh(knowledge, given);
            return watch.Elapsed.TotalMilliseconds;
        }).Order().ElementAt(Repeats / 2);
    }
}
