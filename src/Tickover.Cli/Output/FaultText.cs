using System.Globalization;
using System.Text;
using Tickover.Workshop.FaultFinding;
using Tickover.Workshop.Visits.Cautions;

namespace Tickover.Cli.Output;

/// <summary>A case for a person: what was told, how the causes stand, what to look at next.</summary>
/// <param name="knowledge">Causes, symptoms and tests.</param>
/// <param name="width">Columns to fill.</param>
internal sealed class FaultText(FaultKnowledge knowledge, int width)
{
    private const string Indent = "  ";
    private const int Shown = 6;
    private const int Bar = 20;

    /// <summary>The case as it stands.</summary>
    /// <param name="given">The case.</param>
    /// <param name="outlook">What it looks like.</param>
    /// <returns>The lines, each ended.</returns>
    public string Outlook(FaultCase given, FaultOutlook outlook)
    {
        var text = new StringBuilder();
        if (given.Name.Length > 0)
        {
            text.AppendLine(given.Name).AppendLine();
        }

        text.AppendLine("Told");
        Lines(text, given.Symptoms.Select(s => knowledge.Symptom(s)!).Select(s => $"{s.Words} ({s.Origin}; confidence {s.Confidence})"));
        Section(text, "Ruled out", given.RuledOut.Select(c => knowledge.Causes[c].Words));
        Section(text, "Answered", given.Answers.Select(a => $"{knowledge.Test(a.Test)!.Question} {Said(a)}"));
        Section(text, "Does not go together", outlook.Contradictions);
        text.AppendLine();
        WrappedText.Append(text, width, string.Empty, OutlookWords.Standing(outlook));
        text.Append(TextTable.Text(width, ["Cause", "Chance\t", "", "", "At first\t", "Where to look"], outlook.Ranking.Take(Shown).Select(r => (string[])
        [
            r.Cause.Words, OutlookWords.Percent(r.Probability), new string('█', (int)Math.Round(r.Probability * Bar)), OutlookWords.Chance(r.Probability), OutlookWords.Percent(r.Start), r.Cause.Where,
        ])));
        Lines(text, OutlookWords.Doubts(outlook));
        foreach (var found in outlook.Found)
        {
            text.AppendLine().Append("To do: ").AppendLine(found.Cause.Words);
            Lines(text, [OutlookWords.ToDo(found), OutlookWords.Prior(found.Cause)]);
        }

        return outlook.Next is { } next ? text.Append(Question(next)).ToString() : text.ToString();
    }

    /// <summary>A test to be done: caution first.</summary>
    /// <param name="next">The test.</param>
    /// <returns>The lines, each ended.</returns>
    public string Question(FaultNext next)
    {
        var text = new StringBuilder().AppendLine().Append("Next: ").AppendLine(next.Test.Key);
        if (CautionCatalogue.Find(next.Test.Caution) is { } caution)
        {
            text.AppendLine("Caution");
            Lines(text, [$"{caution.First}. {caution.Why}", .. caution.Conditions, Caution.Closing]);
        }

        WrappedText.Append(text, width, string.Empty, next.Test.Question);
        var widest = next.Test.Answers.Max(a => a.Key.Length);
        Lines(text, next.Test.Answers.Select((a, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1} {WrappedText.Whole(a.Key.PadRight(widest))} {a.Words}")));
        Lines(text, [$"? {WrappedText.Whole(FaultReply.Unsure.PadRight(widest))} it cannot be told"]);
        WrappedText.Append(text, width, string.Empty, $"Why this: {next.Why}");
        return text.ToString();
    }

    /// <summary>All symptoms.</summary>
    /// <returns>The lines, each ended.</returns>
    public string Symptoms()
    {
        var text = new StringBuilder();
        foreach (var group in knowledge.Symptoms.GroupBy(s => s.Group, StringComparer.Ordinal))
        {
            text.AppendLine(group.Key).Append(TextTable.Text(width, ["Key", "What is seen, heard or smelled", "Confidence"], group.Select(s => (string[])[s.Key, s.Words, s.Confidence]))).AppendLine();
        }

        return text.ToString();
    }

    /// <summary>All causes.</summary>
    /// <returns>The lines, each ended.</returns>
    public string Causes() => TextTable.Text(width, ["Key", "Cause", "Where to look", "Prior\t", "Learned\t"], knowledge.Causes.Values.Select(c => (string[])[c.Key, c.Words, c.Where, OutlookWords.Percent(c.Prior), OutlookWords.Percent(c.Learned)]));

    /// <summary>All tests.</summary>
    /// <returns>The lines, each ended.</returns>
    public string Tests() => TextTable.Text(width, ["Key", "Minutes\t", "What to look at", "Answers"], knowledge.Tests.Select(t => (string[])[t.Key, t.Minutes.ToString("0", CultureInfo.InvariantCulture), t.Question, FaultReply.Allowed(t)]));

    private string Said(FaultGiven answer) => answer.Certainty switch
    {
        FaultCertainty.Unsure => "Could not be told.",
        FaultCertainty.Leaning => $"Rather: {Words(answer)}.",
        _ => $"{OutlookWords.Capital(Words(answer))}.",
    };

    private string Words(FaultGiven answer) => knowledge.Test(answer.Test)!.Answers.First(a => string.Equals(a.Key, answer.Answer, StringComparison.Ordinal)).Words;

    private void Section(StringBuilder text, string heading, IEnumerable<string> lines)
    {
        var all = lines.ToList();
        if (all.Count > 0)
        {
            text.AppendLine().AppendLine(heading);
            Lines(text, all);
        }
    }

    private void Lines(StringBuilder text, IEnumerable<string> lines)
    {
        foreach (var line in lines)
        {
            WrappedText.Append(text, width, Indent, line);
        }
    }
}
