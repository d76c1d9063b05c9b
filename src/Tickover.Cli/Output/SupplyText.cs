using System.Text;
using Tickover.Physics.Supply;
using Tickover.Workshop.Supply;

namespace Tickover.Cli.Output;

/// <summary>A supply's analysis for a person: verdict, margins, the pressure along the line, what the readings say.</summary>
/// <param name="width">Columns to fill.</param>
internal sealed class SupplyText(int width)
{
    private const double Likely = 0.02;

    /// <summary>Writes it.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>The lines, each ended.</returns>
    public string Text(SupplyAnalysis analysis)
    {
        var text = new StringBuilder();
        text.AppendLine(analysis.Supply.Name);
        WrappedText.Append(text, width, string.Empty, analysis.Verdict);
        Demand(text, analysis.Supply.Engine);
        text.AppendLine();
        text.Append(TextTable.Text(width, ["Looked at", "Margin\t", "Stands"], analysis.Findings.Select(f => new[] { f.Heading, f.Margin, SupplyWords.Standing(f.Standing) })));
        foreach (var finding in analysis.Findings)
        {
            text.AppendLine().AppendLine(finding.Heading);
            WrappedText.Append(text, width, "  ", finding.Words);
            if (finding.Next.Length > 0)
            {
                WrappedText.Append(text, width, "  ", "Next: " + finding.Next);
            }
        }

        Line(text, analysis);
        if (analysis.Diagnosis is { } diagnosis)
        {
            Diagnosis(text, analysis.Supply, diagnosis);
        }

        text.AppendLine().AppendLine("Before a line is opened");
        foreach (var caution in SupplyCautions.Lines)
        {
            WrappedText.Append(text, width, "  ", caution);
        }

        text.AppendLine();
        WrappedText.Append(text, width, string.Empty, SupplyBands.Origin);
        return text.ToString();
    }

    private void Demand(StringBuilder text, SupplyEngine engine)
    {
        text.AppendLine().AppendLine("What the engine takes");
        WrappedText.Append(text, width, "  ", $"Full load: {engine.Origin}.");
        WrappedText.Append(text, width, "  ", $"Idle: {engine.IdleOrigin}.");
        foreach (var step in engine.Working)
        {
            var isSaid = engine.Origin.Contains(step.NumbersIn, StringComparison.Ordinal) || engine.IdleOrigin.Contains(step.NumbersIn, StringComparison.Ordinal);
            WrappedText.Append(text, width, "  ", isSaid ? step.Note : $"{step.Title}: {step.NumbersIn} = {step.Answer}. {step.Note}");
        }
    }

    private void Line(StringBuilder text, SupplyAnalysis analysis)
    {
        string Gauge(SupplyCase one, string part) => SupplyWords.Pressure(analysis.Supply.Unit, one.Point.Of(part)!.StaticPascals - one.Point.Duty.AirPascals);
        text.AppendLine().AppendLine("What a gauge reads behind each part, at a float valve before its seat");
        text.Append(TextTable.Text(
            width,
            ["Part", .. analysis.Cases.Select(one => SupplyWords.Case(one.Setting.Kind) + "\t")],
            analysis.Cases[0].Point.Parts.Select(part => (IReadOnlyList<string>)[part.Part.Name, .. analysis.Cases.Select(one => Gauge(one, part.Part.Name))])));
    }

    private void Diagnosis(StringBuilder text, FuelSupply supply, SupplyDiagnosis diagnosis)
    {
        text.AppendLine().AppendLine("What the readings say");
        text.Append(TextTable.Text(
            width,
            ["Reading", "Read\t", "Should be\t"],
            supply.Readings.OrderBy(reading => reading.Key).Select(reading => new[]
            {
                SupplyCauseWords.Reading(reading.Key),
                SupplyCauseWords.Value(supply.Unit, reading.Key, reading.Value),
                diagnosis.Expected.TryGetValue(reading.Key, out var expected) ? SupplyCauseWords.Value(supply.Unit, reading.Key, expected) : "–",
            })));
        WrappedText.Append(text, width, "  ", SupplyCauseWords.Said(diagnosis));
        foreach (var cause in diagnosis.Causes.Skip(1).Where(cause => cause.Probability >= Likely))
        {
            WrappedText.Append(text, width, "  ", $"{SupplyCauseWords.Cause(cause.Kind)}: {SupplyCauseWords.Likelihood(cause.Probability)}.");
        }

        if (diagnosis.Next is { } next)
        {
            WrappedText.Append(text, width, "  ", "Next: " + SupplyCauseWords.Check(next));
        }
    }
}
