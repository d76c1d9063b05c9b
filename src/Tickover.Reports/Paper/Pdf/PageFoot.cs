using Tickover.Reports.Charts;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>The foot of a page: what this is, and which page of how many.</summary>
internal static class PageFoot
{
    internal static void Draw(PageCanvas canvas, PageShape shape, string text, string page)
    {
        var look = new TypeScale(1).Small with { Size = 8.4, Lead = 11 };
        var setter = new Setter();
        var top = shape.Height - PageShape.Margin - look.Lead;
        var number = setter.Lines(Prose.Of(page), look, double.MaxValue)[0];
        var line = setter.Lines(Prose.Of(text.ReplaceLineEndings(" ")), look, shape.TextWidth - number.Width - 20)[0];
        canvas.Rule(PageShape.Margin, top - 5, shape.TextWidth, 0.75, Paint.Theme("line"));
        canvas.Line(line, look, PageShape.Margin, top);
        canvas.Line(number, look, shape.Width - PageShape.Margin - number.Width, top);
    }
}
