using System.Globalization;
using System.Text;
using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Workshop.StripDown.Levels;

namespace Tickover.Cli.Output;

/// <summary>Float levels for a person and for a program.</summary>
internal static class LevelText
{
    private const double Percent = 100;

    /// <summary>Writes them for a person.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="answer">What it comes to.</param>
    /// <param name="width">Columns to fill.</param>
    /// <returns>The lines, each ended.</returns>
    public static string Of(LevelSheet sheet, LevelAnswer answer, int width)
    {
        var text = new StringBuilder();
        text.AppendLine(sheet.Name);
        WrappedText.Append(text, width, string.Empty, answer.Verdict);
        WrappedText.Append(text, width, string.Empty, Line($"{sheet.Fuel} at {sheet.Celsius:0.#} °C ({sheet.Density:0} kg/m³), {sheet.Pressure:0.#} kPa at the needle, {sheet.DeadHead:0.#} kPa with nothing taken out. Levels in mm below the face of the lid, held against {answer.Target:0.0}; lip: the nozzle's over the fuel; shut off: the rise with nothing taken out."));
        text.AppendLine().Append(TextTable.Text(width, ["Where", "Dry\t", "Level\t", "Higher by\t", "Lip\t", "Shut off\t", "Spills\t", "It"], answer.Carburettors.Select(Row)));
        foreach (var one in answer.Carburettors)
        {
            foreach (var words in one.Words)
            {
                text.AppendLine();
                WrappedText.Append(text, width, "  ", $"{Capital(one.Float.Where)}: {words}");
            }
        }

        text.AppendLine();
        if (answer.Mixture.Count > 0)
        {
            text.AppendLine("A millimetre more fuel in the chamber:").Append(TextTable.Text(width, ["Where", "At", "Signal, Pa\t", "Fuel\t", "λ\t"], answer.Mixture.Select(Row))).AppendLine();
        }

        foreach (var caution in LevelCautions.All)
        {
            WrappedText.Append(text, width, string.Empty, caution);
        }

        return text.ToString();
    }

    /// <summary>Writes them for a program.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="answer">What it comes to.</param>
    /// <returns>JSON.</returns>
    public static string Json(LevelSheet sheet, LevelAnswer answer) => JsonSerializer.Serialize(
        new LevelReport
        {
            Name = sheet.Name,
            Fuel = sheet.Fuel,
            Density = Math.Round(sheet.Density, 1),
            Verdict = answer.Verdict,
            Target = Math.Round(answer.Target, 2),
            Limit = sheet.Limit,
            Spread = Round(answer.Spread),
            Carburettors = [.. answer.Carburettors.Select(Written)],
            Mixture = [.. answer.Mixture.Select(m => new LevelReportMixture(m.Regime, m.Rpm, m.Throttle, Math.Round(m.Signal, 1), Math.Round(m.FuelPart, 4), Round(m.Lambda), Round(m.LambdaHigher)))],
        },
        CommandJson.Readable.LevelReport) + Environment.NewLine;

    private static LevelReportLine Written(LevelVerdict v) => new()
    {
        Where = v.Float.Where,
        Finding = v.Finding.ToString(),
        IsNo = v.IsNo,
        Sunk = Round(v.Sunk),
        Level = Round(v.Level?.Value),
        LevelBand = Round(v.Level?.PlusMinus),
        OwnBand = Math.Round(v.OwnBand, 3),
        Off = Round(v.Off),
        Lip = Round(v.Lip),
        Tang = Math.Round(v.Tang, 3),
        RiseAtDeadHead = Round(v.RiseAtDeadHead),
        Flooding = Math.Round(v.Flooding, 1),
        MassOff = Math.Round(v.MassOff, 2),
        Words = v.Words,
    };

    private static string[] Row(LevelVerdict v) =>
    [
        v.Float.Where,
        Line($"{v.Float.DryMillimetres:0.0}"),
        v.Level is { } level ? Line($"{level.Value:0.0} ±{level.PlusMinus:0.0}") : "–",
        v.Off is { } off ? Line($"{off:+0.0;−0.0;0.0} ±{v.OwnBand:0.0}") : "–",
        v.Lip is { } lip ? Line($"{lip:0.0}") : "–",
        v.RiseAtDeadHead is { } rise ? Line($"{rise:+0.0;−0.0;0.0}") : "spills",
        Line($"{v.Flooding:0} kPa"),
        v switch
        {
            { Finding: LevelFinding.Floods } => "floods",
            { Finding: LevelFinding.High } => "high",
            { Finding: LevelFinding.Low } => "low",
            { IsMassOff: true } => "float differs",
            { Finding: LevelFinding.Doubtful } => "cannot tell",
            _ => "equal",
        },
    ];

    private static string[] Row(LevelMixture m) =>
    [
        m.Regime,
        m.Rpm > 0 ? Line($"{m.Rpm:0} rpm, {m.Throttle:0.#}°") : "–",
        Line($"{m.Signal:0}"),
        Line($"{Percent * m.FuelPart:+0.0;−0.0;0.0} %"),
        m is { Lambda: { } was, LambdaHigher: { } now } ? Line($"{was:0.00} → {now:0.00}") : "–",
    ];

    private static double? Round(double? value) => value is { } v ? Math.Round(v, 3) : null;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
