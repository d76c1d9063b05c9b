using Tickover.Reports.Charts;

namespace Tickover.Reports.Supply;

/// <summary>A fuel line as it runs from the tank to the float chambers, at its heights; beneath it the pressure, part for part.</summary>
public static class SupplyPicture
{
    /// <summary>Draws it for a page.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>One svg element in the page's colours.</returns>
    public static string ToSvg(SupplyView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var drawing = new SvgDrawing(view.IdPrefix);
        var frame = new SupplyFrame(view);
        Draw(drawing, view, frame);
        Taps(drawing, view, frame);
        return drawing.ToSvg(new SvgFrame { Width = frame.Width, Height = frame.Bottom, ClassName = "supply-picture", Role = "group", Label = SupplySentence.Of(view) });
    }

    internal static void Draw(IDrawing drawing, SupplyView view, SupplyFrame frame)
    {
        new SupplyRun(drawing, view, frame).Draw();
        new SupplyPressures(drawing, view, frame).Draw();
    }

    // Whole columns may be tapped; keyboard and screen reader take the list of parts, which leads to the same places.
    private static void Taps(SvgDrawing drawing, SupplyView view, SupplyFrame frame)
    {
        if (view.AddressOf is not { } address)
        {
            return;
        }

        foreach (var part in view.Case.Point.Parts)
        {
            var (left, right) = frame.Column(part.Part);
            var chosen = part.Part.Name.Equals(view.Chosen, StringComparison.Ordinal);
            using (drawing.Part(new PartMark(part.Part.Name, part.Part.Name, address(part.Part.Name), chosen) { Focusable = false }))
            {
                drawing.Plate(new Box(left, 0, right - left, frame.Chart.Bottom), 0, new Look { Fill = Paint.Mark, Opacity = chosen ? 0.12 : 0 });
            }
        }
    }
}
