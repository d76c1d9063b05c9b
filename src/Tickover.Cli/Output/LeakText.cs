using System.Globalization;
using System.Text;
using Tickover.Physics.Leaks;
using Tickover.Workshop.Leaks;

namespace Tickover.Cli.Output;

/// <summary>A leak test's answer for a person: cautions, verdict, curve, what the walls bear, working.</summary>
/// <param name="width">Columns to fill.</param>
internal sealed class LeakText(int width)
{
    private const string Indent = "  ";

    /// <summary>Writes it.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>The lines, each ended.</returns>
    public string Text(LeakAnalysis analysis)
    {
        var text = new StringBuilder();
        text.AppendLine(analysis.Sheet.Name).AppendLine().AppendLine("Caution");
        Paragraphs(text, LeakCautions.All);
        text.AppendLine().AppendLine(analysis.Verdict.Heading);
        WrappedText.Append(text, width, Indent, analysis.Verdict.Why);
        text.AppendLine().Append("Pressure above the air around, ").AppendLine(analysis.Sheet.Unit.Words);
        text.Append(TextTable.Text(width, ["Minutes\t", "As read\t", "At one temperature\t", "On the line\t"], analysis.Curve.Select(p => (string[])
        [
            p.Minutes.ToString("0.##", CultureInfo.InvariantCulture), Figure(p.GaugePascals, analysis.Sheet.Unit), Figure(p.CorrectedPascals, analysis.Sheet.Unit), Figure(p.FittedPascals, analysis.Sheet.Unit),
        ])));
        text.AppendLine().AppendLine("How small a leak would have shown");
        Paragraphs(text, Smallest(analysis));
        text.AppendLine().AppendLine("What the walls bear");
        WrappedText.Append(text, width, Indent, LeakWords.Walls(analysis));
        text.AppendLine().AppendLine("Working");
        Paragraphs(text, analysis.Working);
        foreach (var doubt in analysis.Doubts)
        {
            text.AppendLine();
            WrappedText.Append(text, width, string.Empty, doubt);
        }

        return text.ToString();
    }

    private void Paragraphs(StringBuilder text, IEnumerable<string> sentences)
    {
        foreach (var sentence in sentences)
        {
            WrappedText.Append(text, width, Indent, sentence);
        }
    }

    private static IEnumerable<string> Smallest(LeakAnalysis analysis)
    {
        yield return LeakWords.Smallest(analysis);
        if (analysis is { SecondsForLimit: { } seconds, Sheet.LimitMillibarLitres: { } limit })
        {
            yield return $"For the limit of {LeakFigures.Leak(limit * LeakUnits.MillibarLitrePerSecond)} such readings have to span {LeakFigures.Time(seconds)}; they span {LeakFigures.Time(analysis.Sheet.Minutes * 60)}.";
        }
    }

    private static string Figure(double pascals, PressureUnit unit) => (pascals / unit.Pascals).ToString("0.00", CultureInfo.InvariantCulture);
}
