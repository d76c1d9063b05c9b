using System.Globalization;
using System.Text;
using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Workshop.StripDown.Build;

namespace Tickover.Cli.Output;

/// <summary>Bench settings for a person and for a program.</summary>
internal static class BuildText
{
    private const double Percent = 100;

    /// <summary>Writes them for a person.</summary>
    /// <param name="sheet">What they were worked out from.</param>
    /// <param name="answer">The settings.</param>
    /// <param name="width">Columns to fill.</param>
    /// <returns>The lines, each ended.</returns>
    public static string Of(BuildSheet sheet, BuildAnswer answer, int width)
    {
        var text = new StringBuilder();
        text.AppendLine(sheet.Name);
        WrappedText.Append(text, width, string.Empty, answer.Verdict);
        if (sheet.Idle.Doubt.Length > 0)
        {
            WrappedText.Append(text, width, string.Empty, sheet.Idle.Doubt);
        }

        foreach (var setting in answer.Settings)
        {
            text.AppendLine();
            WrappedText.Append(text, width, "  ", $"{setting.What}: {setting.Value}. {setting.How} From {setting.Origin}.");
        }

        if (answer.Rods.Count > 0)
        {
            text.AppendLine().Append(TextTable.Text(width, ["Rod", "Length, mm\t", "Longer by\t", "Air at idle\t", "It"], answer.Rods.Select(Row)));
        }

        text.AppendLine();
        foreach (var caution in BuildCautions.All)
        {
            WrappedText.Append(text, width, string.Empty, caution);
        }

        return text.ToString();
    }

    /// <summary>Writes them for a program.</summary>
    /// <param name="sheet">What they were worked out from.</param>
    /// <param name="answer">The settings.</param>
    /// <returns>JSON.</returns>
    public static string Json(BuildSheet sheet, BuildAnswer answer) => JsonSerializer.Serialize(
        new BuildReport
        {
            Name = sheet.Name,
            Verdict = answer.Verdict,
            PlateDegrees = Math.Round(answer.PlateDegrees, 3),
            PlateGap = Math.Round(answer.RodMillimetres, 3),
            ScrewTurns = answer.ScrewTurns,
            Settings = [.. answer.Settings.Select(s => new BuildReportSetting(s.What, s.Value, s.Origin, s.How))],
            Rods = [.. answer.Rods.Select(r => new BuildReportRod(r.Rod.Where, r.Rod.Millimetres, Math.Round(r.Off, 3), r.Share is { } share ? Math.Round(share, 4) : null, r.IsOutside))],
        },
        CommandJson.Readable.BuildReport) + Environment.NewLine;

    private static string[] Row(BuildRodVerdict r) =>
    [
        r.Rod.Where,
        Line($"{r.Rod.Millimetres:0.00}"),
        Line($"{r.Off:+0.00;−0.00;0.00} mm"),
        r.Share is { } share ? Line($"off by {Percent * share:0} %") : "–",
        r.IsOutside ? "outside" : "equal",
    ];

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
