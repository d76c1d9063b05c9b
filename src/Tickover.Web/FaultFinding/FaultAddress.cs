using Tickover.Workshop.FaultFinding;
using Tickover.Workshop.Visits;

namespace Tickover.Web.FaultFinding;

/// <summary>Addresses of the fault finder; without a visit the whole case stands in the address.</summary>
internal static class FaultAddress
{
    public const string Symptom = "s", Out = "out", Answer = "a";

    /// <summary>Where cases begin.</summary>
    public static string Of(Id<Visit>? visit) => visit is { } known ? $"/visits/{known}/faults" : "/faults";

    /// <summary>A case without a visit.</summary>
    public static string Of(FaultCase given, bool choose = false)
    {
        var fields = Fields(given).Select(f => $"{f.Name}={Uri.EscapeDataString(f.Value)}").Concat(choose ? ["choose=1"] : []).ToList();
        return fields.Count == 0 ? "/faults" : $"/faults?{string.Join('&', fields)}";
    }

    /// <summary>The fields a case is carried in.</summary>
    public static IReadOnlyList<(string Name, string Value)> Fields(FaultCase given) =>
    [
        .. given.Symptoms.Select(s => (Symptom, s)),
        .. given.RuledOut.Select(c => (Out, c)),
        .. given.Answers.Select(a => (Answer, $"{a.Test}:{(a.Certainty == FaultCertainty.Unsure ? FaultReply.Unsure : a.Certainty == FaultCertainty.Leaning ? a.Answer + "?" : a.Answer)}")),
    ];

    /// <summary>Reads a case from an address.</summary>
    /// <returns>The case, and what in it is not known.</returns>
    public static (FaultCase Case, IReadOnlyList<string> Unknown) Read(FaultKnowledge table, IQueryCollection query)
    {
        var (given, unknown) = (new FaultCase(), new List<string>());
        foreach (var (act, value) in Values(query, Symptom, FaultAct.Symptom).Concat(Values(query, Out, FaultAct.Out)).Concat(Values(query, Answer, FaultAct.Answer)))
        {
            if (FaultActs.Do(table, given, act, value) is { } after)
            {
                given = after;
            }
            else
            {
                unknown.Add(act == FaultAct.Symptom ? $"There is no symptom \"{value}\". {SymptomSearch.Offer(SymptomSearch.Find(table, value).Closest)}" : $"\"{value}\" is no {(act == FaultAct.Out ? "cause" : "answer")} of this table.");
            }
        }

        return (given, unknown);
    }

    private static IEnumerable<(FaultAct Act, string Value)> Values(IQueryCollection query, string name, FaultAct act) =>
        query[name].OfType<string>().Where(v => v.Length > 0).Select(v => (act, v));
}
