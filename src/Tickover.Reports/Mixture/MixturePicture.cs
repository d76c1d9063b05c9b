using Tickover.Reports.Charts;

namespace Tickover.Reports.Mixture;

/// <summary>The map of λ over speed and throttle as a drawing.</summary>
/// <remarks>
/// The throttle axis is stretched near shut by the square root, because most driving is there. Colour is λ and nothing else;
/// the edge of the target, too lean, too rich, what feeds and no answer are told by lines, hatches and words.
/// </remarks>
public static class MixturePicture
{
    /// <summary>Draws the map.</summary>
    /// <param name="view">What to show and how.</param>
    /// <returns>One svg element with the axes' transforms in its data attributes.</returns>
    public static string ToSvg(MixtureView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var frame = MapFrame.For(view.Map.Grid, view.Size);
        var drawing = new SvgDrawing(view.IdPrefix);
        Draw(drawing, view, frame);
        return drawing.ToSvg(new SvgFrame
        {
            Width = frame.Width,
            Height = frame.Height,
            ClassName = "mixture-picture",
            Label = Sentence(view),
            Data = frame.Data(),
        });
    }

    /// <summary>The map in one sentence: the worst region first.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>Such as "Barrels 1 to 8. Too lean, 2,000 to 3,500 rpm, light throttle."</returns>
    public static string Sentence(MixtureView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return MixtureSentence.For(view.Map, view.Barrel, view.Subject);
    }

    /// <summary>The same figures as a table.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>The table.</returns>
    public static PictureTable TableFor(MixtureView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return MixtureTable.For(view.Map, view.Barrel);
    }

    internal static void Draw(IDrawing drawing, MixtureView view, MapFrame frame)
    {
        var field = new MapField(view.Map, view.Barrel, frame);
        var scale = view.ScaleInUse;
        var labels = new MapLabels(drawing, frame, view.Size);
        MapAxes.Ground(drawing, frame);
        var contours = FieldLayer.Draw(drawing, field, scale);
        MapAxes.Outline(drawing, field.Area.Outline, frame);
        drawing.MarksHere();
        if (view.Tapped is { } tapped)
        {
            labels.Keep(frame.Place(tapped), MapMarks.RingRadius);
        }

        // Words keep off the readings, which are drawn over them
        foreach (var point in view.Measured)
        {
            labels.Keep(frame.Place(point.Spot), MapMarks.RadiusFor(point.Count, view.Size));
        }

        labels.Regions(field);
        labels.Contours(contours, field);
        MapMarks.Measured(drawing, view, frame, scale);
        labels.Deviations(view.Measured);
        if (view.Tapped is { } spot)
        {
            MapMarks.Ring(drawing, frame.Place(spot));
        }

        MapAxes.Draw(drawing, frame, view.Size);
        MapLegend.Draw(drawing, frame, scale, view);
    }
}
