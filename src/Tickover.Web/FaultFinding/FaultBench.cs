using Tickover.Reports.Faults;
using Tickover.Workshop.FaultFinding;
using Tickover.Workshop.Visits;

namespace Tickover.Web.FaultFinding;

/// <summary>A case on a page: kept on a visit, or carried along in the address.</summary>
public sealed class FaultBench
{
    private const int Numbered = 3;
    private const double WorthANumber = 0.03;

    /// <summary>Takes a case.</summary>
    /// <param name="given">The case.</param>
    /// <param name="record">The visit it is kept on; null where there is none.</param>
    /// <param name="knowledge">Causes, symptoms and tests.</param>
    public FaultBench(FaultCase given, VisitRecord? record, FaultKnowledge knowledge)
    {
        Knowledge = knowledge;
        Case = given;
        Record = record;
        Outlook = given.Symptoms.Count == 0 ? null : FaultFinder.Weigh(Knowledge, given);
    }

    /// <summary>Causes, symptoms and tests.</summary>
    public FaultKnowledge Knowledge { get; }

    /// <summary>The case.</summary>
    public FaultCase Case { get; }

    /// <summary>The visit; null where there is none.</summary>
    public VisitRecord? Record { get; }

    /// <summary>What it looks like; null before a symptom is told.</summary>
    public FaultOutlook? Outlook { get; }

    /// <summary>The address without the case.</summary>
    public string Here => FaultAddress.Of(Record?.Visit.Id);

    /// <summary>The page that takes in a symptom.</summary>
    public string Choose => Record is null ? FaultAddress.Of(Case, choose: true) : $"{Here}?choose=1";

    /// <summary>Fields that carry the case along.</summary>
    public IReadOnlyList<(string Name, string Value)> State => FaultAddress.Fields(Case);

    /// <summary>Name of the button that does something to the case.</summary>
    /// <param name="act">What it does.</param>
    /// <returns>The name.</returns>
    public string Field(FaultAct act) => Record is not null ? "value" : act switch { FaultAct.Symptom => FaultAddress.Symptom, FaultAct.Answer => FaultAddress.Answer, _ => FaultAddress.Out };

    /// <summary>Numbers on the drawing.</summary>
    public IReadOnlyList<FaultSpotMark> Marks =>
        [.. (Outlook?.Ranking ?? []).Take(Numbered).Where(r => r.Probability >= WorthANumber).Select((r, i) => (Rank: r, Number: i + 1)).Where(r => r.Rank.Cause.Spot is not null).Select(r => new FaultSpotMark(r.Number, r.Rank.Cause.Spot!.Value, r.Rank.Cause.Where))];

    /// <summary>What was said to a test.</summary>
    /// <param name="answer">The answer.</param>
    /// <returns>Words.</returns>
    public string Said(FaultGiven answer) => Said(Knowledge, answer);

    /// <summary>What was said to a test.</summary>
    /// <param name="knowledge">Where the test is looked up.</param>
    /// <param name="answer">The answer.</param>
    /// <returns>Words.</returns>
    public static string Said(FaultKnowledge knowledge, FaultGiven answer) => answer.Certainty switch
    {
        FaultCertainty.Unsure => "Could not be told",
        FaultCertainty.Leaning => $"Rather: {Words(knowledge, answer)}",
        _ => OutlookWords.Capital(Words(knowledge, answer)),
    };

    private static string Words(FaultKnowledge knowledge, FaultGiven answer) => knowledge.Test(answer.Test)!.Answers.First(a => string.Equals(a.Key, answer.Answer, StringComparison.Ordinal)).Words;
}
