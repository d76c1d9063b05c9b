using System.Globalization;
using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;
using Tickover.Workshop.StripDown.Wear;

namespace Tickover.Reports.StripDown;

/// <summary>Barrels of a set in section, side by side in engine order, what is not as it should be marked where it sits; under each how much of its idle air leaks.</summary>
public static class WearSetPicture
{
    private const double RowHeight = 432;
    private const double BarTop = 252;
    private const double WordsTop = 320;
    private const double WordHeight = 22;
    private const int MostWords = 4;
    private const double Percent = 100;

    /// <summary>Draws it for a page.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="answer">What it comes to.</param>
    /// <param name="size">For a wide page or a phone.</param>
    /// <param name="idPrefix">Begins every id inside.</param>
    /// <returns>One svg element in the page's colours.</returns>
    public static string ToSvg(WearSheet sheet, WearAnswer answer, PictureSize size, string idPrefix)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(answer);
        var columns = new SetColumns(answer.Barrels.Count, size, RowHeight);
        var drawing = new SvgDrawing(idPrefix);
        for (var i = 0; i < answer.Barrels.Count; i++)
        {
            var barrel = answer.Barrels[i];
            var own = Own(answer, barrel);
            var cell = columns.Of(i);
            Heading(drawing, cell, barrel, IsFirst(answer, columns, i));
            BarrelSection.Draw(drawing, cell, barrel, own);
            Bar(drawing, cell, barrel);
            Words(drawing, cell, own);
        }

        return drawing.ToSvg(new SvgFrame { Width = columns.Width, Height = columns.Height, ClassName = "wear-picture", Label = $"{sheet.Name}: {answer.Verdict}" });
    }

    // what belongs to a barrel, or to the carburettor it is the first barrel of
    private static List<WearItem> Own(WearAnswer answer, WearBarrel barrel)
    {
        var first = answer.Barrels.First(b => string.Equals(b.Barrel.Carburettor, barrel.Barrel.Carburettor, StringComparison.Ordinal)) == barrel;
        var (where, body) = ($"barrel {barrel.Barrel.Where}", barrel.Barrel.Carburettor);
        return
        [
            .. answer.Items.Where(i => i.Grade > WearGrade.Good && (string.Equals(i.Where, where, StringComparison.Ordinal) || i.Where.StartsWith($"{where}, ", StringComparison.Ordinal)
                || i.Where.EndsWith($", {where}", StringComparison.Ordinal) || (first && string.Equals(i.Where, body, StringComparison.Ordinal)))),
        ];
    }

    private static bool IsFirst(WearAnswer answer, SetColumns columns, int index) => index == 0 || columns.RowOf(index) != columns.RowOf(index - 1)
        || !string.Equals(answer.Barrels[index - 1].Barrel.Carburettor, answer.Barrels[index].Barrel.Carburettor, StringComparison.Ordinal);

    private static void Heading(SvgDrawing drawing, Box cell, WearBarrel barrel, bool isFirst)
    {
        if (isFirst)
        {
            drawing.Text(barrel.Barrel.Carburettor, new ChartPoint(cell.Left + 8, cell.Top + 16), new Lettering { Size = 15, Anchor = Anchor.Start, Paint = Paint.Ink2 });
            drawing.Line(new ChartPoint(cell.Left + 2, cell.Top + 4), new ChartPoint(cell.Left + 2, cell.Top + RowHeight - 16), Look.Line(Paint.Hair, 1.5));
        }

        drawing.Text(barrel.Barrel.Where, new ChartPoint(cell.Centre.X, cell.Top + 42), new Lettering { Size = 22, Bold = true });
    }

    private static void Bar(SvgDrawing drawing, Box cell, WearBarrel barrel)
    {
        var half = Math.Min(cell.Width / 2 - 10, 52);
        var box = new Box(cell.Centre.X - half, cell.Top + BarTop, 2 * half, 18);
        drawing.Plate(box, 0, new Look { Fill = Paint.Surface, Stroke = Paint.AirEdge, Width = 1.5 });
        drawing.Plate(box with { Width = box.Width * Math.Min(1, barrel.Share) }, 0, new Look { Fill = Paint.AirEdge, Stroke = Paint.AirEdge, Width = 1.5 });
        drawing.Text(Line($"{Percent * barrel.Share:0} % leaks"), new ChartPoint(cell.Centre.X, box.Bottom + 21), new Lettering { Size = 16, Bold = true });
    }

    private static void Words(SvgDrawing drawing, Box cell, List<WearItem> own)
    {
        var shown = own.Count > MostWords ? own.Take(MostWords - 1).ToList() : own;
        var y = cell.Top + WordsTop;
        foreach (var item in shown)
        {
            ConditionMark.Draw(drawing, new ChartPoint(cell.Left + 17, y - 5), 14, BarrelSection.ConditionOf(item.Grade));
            drawing.Text(Short(item.Kind), new ChartPoint(cell.Left + 30, y), new Lettering { Size = 15, Anchor = Anchor.Start });
            y += WordHeight;
        }

        if (own.Count == 0)
        {
            ConditionMark.Draw(drawing, new ChartPoint(cell.Left + 17, y - 5), 14, Condition.Within);
            drawing.Text("all good", new ChartPoint(cell.Left + 30, y), new Lettering { Size = 15, Anchor = Anchor.Start });
        }
        else if (shown.Count < own.Count)
        {
            drawing.Text(Line($"and {own.Count - shown.Count} more"), new ChartPoint(cell.Left + 30, y), new Lettering { Size = 15, Anchor = Anchor.Start });
        }
    }

    private static string Short(WearKind kind) => kind switch
    {
        WearKind.Light => "plate, light",
        WearKind.Angle => "plate, angle",
        WearKind.Needle => "needle",
        WearKind.Tube => "emulsion",
        WearKind.Stop => "stop",
        _ => WearWords.Name(kind),
    };

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
