using System.Text;
using Tickover.Reports.Charts;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>The map as text for the command line: a picture of characters and a table.</summary>
/// <remarks>
/// With colours each character carries two places, one above the other; without, characters alone. Too lean is <c>+</c>, too rich
/// <c>-</c>, no answer <c>/</c> either way, so nothing rests on colour.
/// </remarks>
public static class TerminalMap
{
    private const int AxisWidth = 6;
    private const int NarrowestMap = 24;
    private const int WidestMap = 96;

    // A character is about twice as high as wide, and a map reads best somewhat wider than high
    private const int ColumnsALine = 4;
    private const char Upper = '▀';

    /// <summary>The map, its legend and its table.</summary>
    /// <param name="map">The map.</param>
    /// <param name="barrelNumber">The barrel, from 1.</param>
    /// <param name="width">Width of the terminal in characters; 30 or more, less is taken as 30.</param>
    /// <param name="colours">What colours it takes.</param>
    /// <returns>Lines ended by a line feed; escape sequences only where colours are taken.</returns>
    public static string Render(MixtureMap map, int barrelNumber, int width, TerminalColours colours)
    {
        ArgumentNullException.ThrowIfNull(map);
        var barrel = map.ForBarrel(barrelNumber);
        var text = new StringBuilder();
        text.Append(Sentence(map, barrelNumber)).Append("\n\n").Append(Picture(map, barrelNumber, width, colours)).Append('\n');
        TerminalTable.Append(text, map, barrel, Math.Max(width, AxisWidth + NarrowestMap));
        return text.ToString();
    }

    /// <summary>The map in one sentence, as over the picture.</summary>
    /// <param name="map">The map.</param>
    /// <param name="barrelNumber">The barrel, from 1.</param>
    /// <returns>Such as "Barrels 1 to 8. Too lean, 2,000 to 3,500 rpm, light throttle."</returns>
    public static string Sentence(MixtureMap map, int barrelNumber)
    {
        ArgumentNullException.ThrowIfNull(map);
        return MixtureSentence.For(map, map.ForBarrel(barrelNumber), null);
    }

    /// <summary>The picture of characters alone, with its axes and its legend.</summary>
    /// <param name="map">The map.</param>
    /// <param name="barrelNumber">The barrel, from 1.</param>
    /// <param name="width">Width of the terminal in characters; 30 or more, less is taken as 30.</param>
    /// <param name="colours">What colours it takes.</param>
    /// <returns>Lines ended by a line feed; escape sequences only where colours are taken.</returns>
    public static string Picture(MixtureMap map, int barrelNumber, int width, TerminalColours colours)
    {
        ArgumentNullException.ThrowIfNull(map);
        var barrel = map.ForBarrel(barrelNumber);
        var scale = LambdaScale.For(barrel);
        var columns = Math.Clamp(width - AxisWidth, NarrowestMap, WidestMap);
        var lines = Math.Clamp(columns / ColumnsALine, 8, 18);
        var text = new StringBuilder();
        var cells = new TerminalCells(map, barrel, columns, 2 * lines);
        for (var line = 0; line < lines; line++)
        {
            text.Append(cells.OpeningAt(line).PadLeft(AxisWidth - 1)).Append(' ');
            for (var column = 0; column < columns; column++)
            {
                Append(text, cells, (column, line), scale, colours);
            }

            text.Append(colours == TerminalColours.None ? "" : TerminalPaint.Reset).Append('\n');
        }

        text.Append(' ', AxisWidth).Append(cells.SpeedAxis()).Append('\n');
        Legend(text, scale, colours, cells.Reasons);
        return text.ToString();
    }

    private static void Append(
        StringBuilder text, TerminalCells cells, (int Column, int Line) at, LambdaScale scale, TerminalColours colours)
    {
        var (upper, lower) = (cells[at.Column, 2 * at.Line], cells[at.Column, 2 * at.Line + 1]);
        var sign = cells.SignAt(at.Column, at.Line);
        if (colours == TerminalColours.None)
        {
            text.Append(sign ?? '·');
            return;
        }

        if (!upper.HasAnswer || !lower.HasAnswer)
        {
            var isSparse = (at.Column + 2 * at.Line) % 4 == 0;
            text.Append(TerminalPaint.Reset).Append(isSparse ? '/' : ' ');
            return;
        }

        // Signs are sown thinly over the colour, like a hatch, and closely along the target's edge
        var sown = cells.IsEdge(at.Column, at.Line) || (at.Column + 3 * at.Line) % 6 == 0;
        if (sign is { } mark && sown)
        {
            var middle = (upper.Lambda + lower.Lambda) / 2;
            text.Append(TerminalPaint.On(Cividis.At(scale.PartOf(middle)), colours)).Append(mark);
            return;
        }

        text.Append(TerminalPaint.Halves(Cividis.At(scale.PartOf(upper.Lambda)), Cividis.At(scale.PartOf(lower.Lambda)), colours)).Append(Upper);
    }

    private static void Legend(StringBuilder text, LambdaScale scale, TerminalColours colours, IEnumerable<NoAnswer> reasons)
    {
        const int barLength = 24;
        if (colours != TerminalColours.None)
        {
            text.Append("lambda ").Append(Shown.Lambda(scale.Richest)).Append(" rich ");
            for (var k = 0; k < barLength; k++)
            {
                var (from, to) = (Cividis.At(2.0 * k / (2 * barLength - 1)), Cividis.At((2.0 * k + 1) / (2 * barLength - 1)));
                text.Append(TerminalPaint.Sides(from, to, colours)).Append('▌');
            }

            text.Append(TerminalPaint.Reset).Append(" lean ").Append(Shown.Lambda(scale.Leanest)).Append('\n');
        }

        text.Append(colours == TerminalColours.None ? "· within the target   " : "").Append("+ too lean   - too rich\n");
        var why = string.Join(", ", reasons.Select(r => char.ToLowerInvariant(r.ShortWords[0]) + r.ShortWords[1..]));
        text.Append(why.Length > 0 ? $"/ no answer: {why}\n" : "");
    }
}
