using System.Globalization;
using System.Text;
using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Workshop.StripDown.Jets;

namespace Tickover.Cli.Output;

/// <summary>Jets of a flow bench for a person and for a program.</summary>
internal static class JetBenchText
{
    /// <summary>Writes them for a person.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="jets">What each is.</param>
    /// <param name="sets">What each set is.</param>
    /// <param name="width">Columns to fill.</param>
    /// <returns>The lines, each ended.</returns>
    public static string Of(JetSheet sheet, IReadOnlyList<JetVerdict> jets, IReadOnlyList<JetSetVerdict> sets, int width)
    {
        var text = new StringBuilder();
        text.AppendLine(sheet.Name);
        if (jets.Any(j => j.Flow is not null))
        {
            text.AppendLine(Line($"On the bench: {sheet.Liquid} at {sheet.Celsius:0.#} °C, head {Head(sheet)} mm, bores {sheet.LengthRatio:0.#} diameters long."));
        }

        text.AppendLine().Append(TextTable.Text(width, ["Part", "Where", "Stamp\t", "Gauge\t", "By flow, mm\t", "ml/min\t", "Off set\t", "It"], jets.Select(Row)));
        foreach (var jet in jets.Where(j => j.Finding != JetFinding.Agrees))
        {
            text.AppendLine();
            WrappedText.Append(text, width, "  ", $"{Capital(jet.Jet.Part)}, {jet.Jet.Where}: {jet.Words}");
        }

        foreach (var set in sets)
        {
            text.AppendLine();
            WrappedText.Append(text, width, "  ", Set(set));
        }

        text.AppendLine();
        foreach (var caution in JetCautions.All)
        {
            WrappedText.Append(text, width, string.Empty, caution);
        }

        return text.ToString();
    }

    /// <summary>Writes them for a program.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="jets">What each is.</param>
    /// <param name="sets">What each set is.</param>
    /// <returns>JSON.</returns>
    public static string Json(JetSheet sheet, IReadOnlyList<JetVerdict> jets, IReadOnlyList<JetSetVerdict> sets) => JsonSerializer.Serialize(
        new JetBenchDocument
        {
            Name = sheet.Name,
            Liquid = sheet.Liquid,
            SetLimit = JetJudge.SetLimit,
            Jets = [.. jets.Select(Written)],
            Sets = [.. sets.Select(s => new JetBenchSet(s.Part, s.Stamp, s.Count, Round(s.SpreadPart) ?? 0, [.. s.Outside.Select(v => v.Jet.Where)], [.. s.CannotTell.Select(v => v.Jet.Where)]))],
        },
        CommandJson.Readable.JetBenchDocument) + Environment.NewLine;

    private static JetBenchLine Written(JetVerdict v) => new()
    {
        Part = v.Jet.Part,
        Where = v.Jet.Where,
        Stamp = v.Jet.Stamp,
        StampBore = Round(v.StampBore),
        PinBore = v.Jet.PinMillimetres,
        FlowBore = Round(v.FlowBore),
        FlowBand = v.FlowBore is null ? null : Round(v.FlowBand),
        Flow = v.Flow is { } flow ? Math.Round(flow, 1) : null,
        OffSet = Round(v.OffSet),
        OffSetBand = v.OffSet is null ? null : Round(v.OffSetBand),
        Finding = v.Finding.ToString(),
        Words = v.Words,
    };

    private static string[] Row(JetVerdict v) =>
    [
        v.Jet.Part,
        v.Jet.Where,
        v.Jet.Stamp,
        v.Jet.PinMillimetres is { } pin ? Line($"{pin:0.00}") : "–",
        v.FlowBore is { } bore ? Line($"{bore:0.000} ±{v.FlowBand:0.000}") : "–",
        v.Flow is { } flow ? Line($"{flow:0.0}") : "–",
        v.OffSet is { } off ? Line($"{100 * off:+0.0;−0.0;0.0} ±{100 * v.OffSetBand:0.0} %") : "–",
        Word(v.Finding),
    ];

    private static string Word(JetFinding finding) => finding switch
    {
        JetFinding.Agrees => "agrees",
        JetFinding.Wide => "wide",
        JetFinding.Blocked => "blocked",
        JetFinding.Narrow => "narrow",
        JetFinding.OtherNumbering => "other numbers",
        JetFinding.Rounded => "rounded",
        _ => "not known",
    };

    private static string Set(JetSetVerdict set)
    {
        var name = Line($"{set.Count} of {set.Part} {set.Stamp}: flows differ by {100 * set.SpreadPart:0.0} % in all; each may be {100 * JetJudge.SetLimit:0.0} % off the middle one.");
        return (set.Outside.Count, set.CannotTell.Count) switch
        {
            (0, 0) => $"{name} An equal set.",
            (0, _) => $"{name} Cannot tell of {Names(set.CannotTell)}: time a larger volume.",
            _ => $"{name} Outside: {Names(set.Outside)}.",
        };
    }

    private static string Names(IReadOnlyList<JetVerdict> jets) => string.Join("; ", jets.Select(j => j.Jet.Where));

    private static string Head(JetSheet sheet) => sheet.HeadAtFirst == sheet.HeadAtLast ? Line($"{sheet.HeadAtFirst:0}") : Line($"{sheet.HeadAtFirst:0} falling to {sheet.HeadAtLast:0}");

    private static double? Round(double? value) => value is { } v ? Math.Round(v, 4) : null;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
