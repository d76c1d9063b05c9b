using Tickover.Reports.Charts;
using Tickover.Workshop.Linkages;

namespace Tickover.Reports.Linkages;

/// <summary>A throttle linkage from above, to scale, with the pedal so far down; beneath it how far each carburettor stands from the mean over the travel.</summary>
public static class LinkagePicture
{
    /// <summary>Draws it for a page.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>One svg element in the page's colours.</returns>
    public static string ToSvg(LinkageView view) => Drawn(view, out var frame).ToSvg(Frame(view, frame));

    /// <summary>Draws it for a file of its own, in the colours of paper.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>A whole SVG file.</returns>
    public static string ToFile(LinkageView view)
    {
        var drawing = Drawn(view, out var frame);
        return SvgFile.Of(drawing.ToSvg(Frame(view, frame)), frame.Width, frame.Height);
    }

    private static SvgDrawing Drawn(LinkageView view, out LinkageFrame frame)
    {
        ArgumentNullException.ThrowIfNull(view);
        var drawing = new SvgDrawing(view.IdPrefix);
        frame = new LinkageFrame(view);
        var (moment, stance) = LinkageAnalyst.At(view.Linkage, view.Down, view.Analysis.Limits);
        new LinkagePlan(drawing, view, frame).Draw(moment, stance);
        MismatchChart.Air(drawing, view, frame, moment);
        MismatchChart.Angle(drawing, view, frame, moment);
        return drawing;
    }

    private static SvgFrame Frame(LinkageView view, LinkageFrame frame) =>
        new() { Width = frame.Width, Height = frame.Height, ClassName = "linkage-picture", Label = LinkageSentence.Of(view) };
}
