using Tickover.Workshop.FaultFinding;

namespace Tickover.Web.FaultFinding;

/// <summary>Does things to a case.</summary>
internal static class FaultActs
{
    /// <summary>Does one.</summary>
    /// <param name="table">Where keys are looked up.</param>
    /// <param name="given">The case.</param>
    /// <param name="act">What to do.</param>
    /// <param name="value">To what.</param>
    /// <returns>The case after it; null where the value is none the table knows.</returns>
    public static FaultCase? Do(FaultKnowledge table, FaultCase given, FaultAct act, string value)
    {
        return act switch
        {
            FaultAct.Symptom => table.Symptom(value) is { } symptom ? given with { Symptoms = [.. given.Symptoms.Append(symptom.Key).Distinct(StringComparer.Ordinal)] } : null,
            FaultAct.Drop => given with { Symptoms = Without(given.Symptoms, value) },
            FaultAct.Answer => Reply(table, value) is { } reply ? given.With(reply) : null,
            FaultAct.Undo => given.Undone(),
            FaultAct.Out => table.Causes.ContainsKey(value) ? given with { RuledOut = [.. given.RuledOut.Append(value).Distinct(StringComparer.Ordinal)] } : null,
            FaultAct.Anew => new FaultCase(),
            FaultAct.Back => given with { RuledOut = Without(given.RuledOut, value) },
            _ => null,
        };
    }

    /// <summary>The act in words, for the record.</summary>
    /// <param name="table">Where keys are looked up.</param>
    /// <param name="act">What was done.</param>
    /// <param name="value">To what.</param>
    /// <returns>Words.</returns>
    public static string Words(FaultKnowledge table, FaultAct act, string value) => act switch
    {
        FaultAct.Symptom => $"symptom: {table.Symptom(value)?.Words}",
        FaultAct.Drop => "symptom taken back",
        FaultAct.Answer => Reply(table, value) is { } reply ? $"fault finder: {FaultBench.Said(table, reply)}" : "answer",
        FaultAct.Undo => "last answer taken back",
        FaultAct.Out => $"ruled out: {table.Causes.GetValueOrDefault(value)?.Words}",
        FaultAct.Anew => "fault finder begun anew",
        _ => "cause brought back",
    };

    /// <summary>Reads an answer as written in an address.</summary>
    /// <param name="table">Where its test is looked up.</param>
    /// <param name="value">Key of the test, a colon, the answer.</param>
    /// <returns>The answer; null where it is none.</returns>
    public static FaultGiven? Reply(FaultKnowledge table, string value) =>
        value.Split(':', 2) is [var key, var said] && table.Test(key) is { } test ? FaultReply.Read(test, said) : null;

    private static List<string> Without(IEnumerable<string> keys, string key) => [.. keys.Where(k => !string.Equals(k, key, StringComparison.Ordinal))];
}
