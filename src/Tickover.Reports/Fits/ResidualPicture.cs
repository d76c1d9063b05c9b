using Tickover.Reports.Charts;

namespace Tickover.Reports.Fits;

/// <summary>Measured less fitted λ of every reading, over the opening and over the speed, with the 90 % band: a regime that is off shows as a bar off the line.</summary>
public static class ResidualPicture
{
    /// <summary>Draws the picture.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>One svg element.</returns>
    public static string ToSvg(ResidualView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var residuals = view.Residuals;
        var frame = new ResidualFrame(residuals, view.Size);
        var drawing = new SvgDrawing(view.IdPrefix);
        new ResidualLayers(drawing, frame, residuals, view.Size).Draw();
        return drawing.ToSvg(new SvgFrame { Width = frame.Width, Height = frame.Height, ClassName = "residual-picture", Label = Sentence(view) });
    }

    /// <summary>The picture in a sentence.</summary>
    /// <param name="view">What is shown.</param>
    /// <returns>Such as "42 readings beside the fit, 3 outside the 90 % band; cruise read 0.03 lean of the fit."</returns>
    public static string Sentence(ResidualView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return ResidualWords.Sentence(view.Residuals);
    }

    /// <summary>The same as a table, by regime.</summary>
    /// <param name="view">What is shown.</param>
    /// <returns>The table.</returns>
    public static PictureTable TableFor(ResidualView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return ResidualWords.Table(view.Residuals);
    }
}
