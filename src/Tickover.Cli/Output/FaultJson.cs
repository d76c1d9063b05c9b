using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Workshop.FaultFinding;
using Tickover.Workshop.Visits.Cautions;

namespace Tickover.Cli.Output;

/// <summary>A case as JSON.</summary>
internal static class FaultJson
{
    private const int Digits = 4;

    /// <summary>Writes the document.</summary>
    /// <param name="knowledge">Causes, symptoms and tests.</param>
    /// <param name="given">The case.</param>
    /// <param name="outlook">What it looks like.</param>
    /// <returns>The text.</returns>
    public static string Text(FaultKnowledge knowledge, FaultCase given, FaultOutlook outlook) => JsonSerializer.Serialize(
        new FaultReport
        {
            Name = given.Name,
            Knowledge = $"{knowledge.Name} {knowledge.Version}",
            Symptoms = [.. given.Symptoms.Select(s => knowledge.Symptom(s)!).Select(s => new FaultReportSymptom(s.Key, s.Words, s.Origin, s.Confidence))],
            RuledOut = given.RuledOut,
            Answers = [.. given.Answers.Select(a => new FaultReportGiven(a.Test, a.Answer, a.Certainty.ToString()))],
            Standing = outlook.Standing.ToString(),
            Heading = OutlookWords.Standing(outlook),
            Ranking = [.. outlook.Ranking.Select(Rank)],
            Other = Round(outlook.Other),
            Several = Round(outlook.Several),
            OpenBits = Round(outlook.OpenBits),
            Next = outlook.Next is { } next ? Test(next) : null,
            Contradictions = outlook.Contradictions,
            Doubts = OutlookWords.Doubts(outlook),
        },
        CommandJson.Readable.FaultReport) + Environment.NewLine;

    private static FaultReportRank Rank(FaultRank r) => new(
        r.Cause.Key, r.Cause.Words, r.Cause.Where, r.Cause.ToDo, r.Cause.Stage.ToString(), Round(r.Probability), Round(r.Start), Round(r.Cause.Learned), Round(r.Cause.Prior), OutlookWords.Chance(r.Probability));

    private static FaultReportTest Test(FaultNext next) => new()
    {
        Key = next.Test.Key,
        Question = next.Test.Question,
        Answers = [.. next.Test.Answers.Select(a => new FaultReportAnswer(a.Key, a.Words))],
        Why = next.Why,
        Minutes = next.Test.Minutes,
        PartsOff = next.Test.PartsOff,
        Bits = Round(next.Bits),
        Caution = CautionCatalogue.Find(next.Test.Caution) is { } c ? [$"{c.First}. {c.Why}", .. c.Conditions, Workshop.Visits.Cautions.Caution.Closing] : [],
        Origin = next.Test.Origin,
        Confidence = next.Test.Confidence,
    };

    private static double Round(double value) => Math.Round(value, Digits);
}
