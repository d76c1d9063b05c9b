using System.Globalization;
using System.Text;
using Tickover.Workshop.Tanks;

namespace Tickover.Cli.Output;

/// <summary>Tanks for a person.</summary>
/// <param name="width">Columns to fill.</param>
internal sealed class TankText(int width)
{
    /// <summary>Writes it.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>The lines, each ended.</returns>
    public string Text(TankAnalysis analysis)
    {
        var text = new StringBuilder();
        var set = analysis.Set;
        text.AppendLine(set.Name).AppendLine();
        text.AppendLine(set.Tanks.Count > 1 ? "Strapping table, car level, tanks levelled; dips in mm" : "Strapping table, car level; dip in mm");
        text.Append(TextTable.Text(width, ["Litres\t", .. set.Tanks.SelectMany(t => Heads(set, t.Name)), "Ohms\t", "Needle\t"], analysis.Table.Select(l => Row(set, l))));
        WrappedText.Append(text, width, string.Empty, analysis.IsNeedleRead ? "Ohms and needle as read, smoothed; held where nothing was read." : "Ohms and needle from the families, not read.");
        if (analysis.UnusableLitres is not null)
        {
            text.AppendLine().AppendLine("Fuel left in all tanks when the pick-up draws air");
            text.Append(TextTable.Text(width, ["Car", "Litres\t", "Needle then\t"], analysis.Stances.Select(s => new[] { s.Stance.Name, Figure(s.UnusableLitres, "0.0"), Needle(s.NeedleThen) })));
        }

        if (analysis.Fill is { } fill)
        {
            text.AppendLine().AppendLine("Fill against shape; dips in mm");
            text.Append(TextTable.Text(width, ["Poured\t", "Dip read\t", "As drawn\t", "Set right\t", "Litres by dip\t"], fill.Lines.Select(l => new[]
            {
                Figure(1000 * l.Read.PouredCubicMetres, "0.#"), Figure(1000 * l.Read.DipMetres, "0"), Figure(1000 * l.DrawnDipMetres, "0.0"), Figure(1000 * l.FittedDipMetres, "0.0"),
                string.Create(CultureInfo.InvariantCulture, $"{1000 * l.FittedCubicMetres:0.0} ± {1000 * l.BandCubicMetres:0.0}{(l.StandsOut ? " !" : "")}"),
            })));
        }

        AppendAdvice(text, width, analysis.TankAdvice);
        return text.ToString();
    }

    /// <summary>Writes advice under its headings.</summary>
    /// <param name="text">Where to.</param>
    /// <param name="width">Columns to fill.</param>
    /// <param name="advice">The advice.</param>
    public static void AppendAdvice(StringBuilder text, int width, IReadOnlyList<TankAdvice> advice)
    {
        foreach (var line in advice)
        {
            text.AppendLine().AppendLine(line.IsDanger ? $"Danger: {line.Heading}" : line.Heading);
            WrappedText.Append(text, width, "  ", line.Words);
        }
    }

    /// <summary>A needle's place in per cent of the scale.</summary>
    /// <param name="needle">0 at E, 1 at F; null for none.</param>
    /// <returns>Such as "52 %".</returns>
    public static string Needle(double? needle) => needle switch
    {
        null => "-",
        < 0 => "below E",
        > 1 => "past F",
        { } n => string.Create(CultureInfo.InvariantCulture, $"{100 * n:0} %"),
    };

    private static string[] Heads(TankSet set, string name) => set.Tanks.Count > 1 ? [$"{name} l\t", $"{name} dip\t"] : ["Dip\t"];

    private static string[] Row(TankSet set, StrappingLine line) =>
    [
        Figure(line.Litres, "0.#"),
        .. line.Tanks.SelectMany(t => set.Tanks.Count > 1 ? new[] { Figure(t.Litres, "0.0"), Figure(t.DipMillimetres, "0") } : [Figure(t.DipMillimetres, "0")]),
        Figure(line.Ohms, "0"),
        Needle(line.Needle),
    ];

    private static string Figure(double? value, string format) => value?.ToString(format, CultureInfo.InvariantCulture) ?? "-";
}
