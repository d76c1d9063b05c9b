using System.Globalization;
using System.Text;
using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Workshop.StripDown.Wear;

namespace Tickover.Cli.Output;

/// <summary>Wear of stripped carburettors for a person and for a program.</summary>
internal static class WearText
{
    private const double Percent = 100;
    private const double KilogramsAnHour = 3600;

    /// <summary>Writes it for a person.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="answer">What it comes to.</param>
    /// <param name="width">Columns to fill.</param>
    /// <returns>The lines, each ended.</returns>
    public static string Of(WearSheet sheet, WearAnswer answer, int width)
    {
        var text = new StringBuilder();
        text.AppendLine(sheet.Name);
        WrappedText.Append(text, width, string.Empty, answer.Verdict);
        WrappedText.Append(text, width, string.Empty, $"Idle {sheet.Idle.Origin}. {sheet.Idle.Doubt}".TrimEnd());
        text.AppendLine().Append(TextTable.Text(width, ["Barrel", "In", "Leaks, kg/h\t", "Of its idle air\t", "Plate left\t", "Worst"], answer.Barrels.Select(Row)));
        foreach (var one in answer.Barrels)
        {
            WrappedText.Append(text, width, "  ", $"Barrel {one.Barrel.Where}: {one.Words}");
        }

        var told = answer.Items.Where(i => i.Grade > WearGrade.Good).ToList();
        text.AppendLine().Append(TextTable.Text(width, ["Where", "What", "Measured", "At idle\t", "It"], told.Select(Row)));
        foreach (var item in told.Where(i => i.Grade >= WearGrade.Worn))
        {
            WrappedText.Append(text, width, "  ", $"{Capital(WearWords.Name(item.Kind))}, {item.Where}: {item.Words} Limit: {item.Limit}.");
        }

        WrappedText.Append(text, width, "  ", Line($"{answer.Items.Count - told.Count} other things measured are as they should be."));
        text.AppendLine();
        foreach (var caution in WearCautions.All)
        {
            WrappedText.Append(text, width, string.Empty, caution);
        }

        return text.ToString();
    }

    /// <summary>Writes it for a program.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="answer">What it comes to.</param>
    /// <returns>JSON.</returns>
    public static string Json(WearSheet sheet, WearAnswer answer) => JsonSerializer.Serialize(
        new WearReport
        {
            Name = sheet.Name,
            Verdict = answer.Verdict,
            Idle = new WearReportIdle(sheet.Idle.Rpm, Math.Round(KilogramsAnHour * sheet.Idle.KilogramsPerSecond, 3), Math.Round(sheet.Idle.DepressionPascals), Round(sheet.Idle.PlateDegrees), sheet.Idle.Origin, sheet.Idle.Doubt),
            Barrels = [.. answer.Barrels.Select(b => new WearReportBarrel(b.Barrel.Where, b.Barrel.Carburettor, Math.Round(b.KilogramsAnHour, 3), Math.Round(b.Share, 4), Round(b.PlateDegrees), Math.Round(b.OverMiddle, 3), b.Worst.ToString(), b.Words))],
            Items = [.. answer.Items.Select(i => new WearReportItem(i.Where, i.Kind.ToString(), i.Grade.ToString(), i.Measured, i.Limit, Round(i.KilogramsAnHour), Round(i.Least), Round(i.Most), Round(i.Share), i.Words))],
        },
        CommandJson.Readable.WearReport) + Environment.NewLine;

    private static string[] Row(WearBarrel b) =>
    [
        b.Barrel.Where, b.Barrel.Carburettor, Line($"{b.KilogramsAnHour:0.00}"), Line($"{Percent * b.Share:0} %"), b.PlateDegrees is { } left ? Line($"{left:0.00}°") : "–", WearWords.Name(b.Worst),
    ];

    private static string[] Row(WearItem i) =>
    [
        i.Where, WearWords.Name(i.Kind), i.Measured,
        i.KilogramsAnHour is { } air ? i is { Least: { } least, Most: { } most } ? Line($"{air:0.00} ({least:0.00}–{most:0.00}) kg/h") : Line($"{air:0.00} kg/h") : "–",
        WearWords.Name(i.Grade),
    ];

    private static double? Round(double? value) => value is { } v ? Math.Round(v, 4) : null;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
