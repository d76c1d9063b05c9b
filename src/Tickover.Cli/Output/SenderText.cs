using System.Globalization;
using System.Text;
using Tickover.Workshop.Tanks;

namespace Tickover.Cli.Output;

/// <summary>Sender and gauge for a person.</summary>
/// <param name="width">Columns to fill.</param>
internal sealed class SenderText(int width)
{
    private const double Worth = 0.01; // less likely faults are not listed

    /// <summary>Writes it.</summary>
    /// <param name="analysis">The analysis, with readings.</param>
    /// <returns>The lines, each ended.</returns>
    public string Text(TankAnalysis analysis)
    {
        var text = new StringBuilder();
        var verdict = analysis.Sender!;
        text.AppendLine(analysis.Set.Name).AppendLine();
        text.AppendLine("What explains the readings");
        text.Append(TextTable.Text(width, ["Fault", "Probability\t", "Sender Ω\t", "Gauge Ω\t"], verdict.Diagnosis.Faults
            .Where(f => f.Probability >= Worth)
            .Select(f => new[] { SenderFaultWords.Name(f.Fault), Percent(f.Probability), f.Best.Sender.Key, f.Best.Gauge.Key })));
        if (verdict.Cures.Count > 0)
        {
            text.AppendLine().AppendLine("Cures on the readings as they are, error of the needle over the scale");
            text.Append(TextTable.Text(width, ["Cure", "Average\t", "Worst\t", "At litres\t"], verdict.Cures.Select(c => new[]
            {
                GaugeCureWords.What(c), Percent(c.RootMeanSquare), Percent(Math.Abs(c.Worst.Error)), (1000 * c.Worst.VolumeCubicMetres).ToString("0", CultureInfo.InvariantCulture),
            })));
        }

        TankText.AppendAdvice(text, width, analysis.SenderAdvice);
        return text.ToString();
    }

    private static string Percent(double part) => string.Create(CultureInfo.InvariantCulture, $"{100 * part:0} %");
}
