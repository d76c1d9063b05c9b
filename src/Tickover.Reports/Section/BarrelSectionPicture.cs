using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;

namespace Tickover.Reports.Section;

/// <summary>One barrel cut open along its bore, every part where it is and named.</summary>
/// <remarks>
/// Drawn as a downdraught; a sidedraught is the same drawing lying down. Bore, choke, plate and holes are to scale with each other,
/// the heights in the well to a scale of their own. Wall thicknesses and passages are a diagram.
/// </remarks>
public static class BarrelSectionPicture
{
    // What the phone sees of the drawing: the casing without the names round it
    private const double PhoneLeft = 60;
    private const double PhoneTop = 36;
    private const double PhoneWidth = 632;
    private const double PhoneHeight = 530;

    /// <summary>Draws the barrel.</summary>
    /// <param name="view">What to show and how.</param>
    /// <returns>One svg element; each part is a link or a button with its key in <c>data-part</c>.</returns>
    public static string ToSvg(BarrelSectionView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var drawing = new SvgDrawing(view.IdPrefix);
        var full = view.Size == PictureSize.Full;
        Draw(drawing, view);
        return drawing.ToSvg(new SvgFrame
        {
            Left = full ? SectionGeometry.Left : PhoneLeft,
            Top = full ? SectionGeometry.Top : PhoneTop,
            Width = full ? SectionGeometry.Width : PhoneWidth,
            Height = full ? SectionGeometry.Height : PhoneHeight,
            ClassName = "section-picture",
            Role = "group",
            Label = Sentence(view),
        });
    }

    /// <summary>The parts in the order of the drawing, for the list beside or below it.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>The parts.</returns>
    public static IReadOnlyList<SectionPart> Parts(BarrelSectionView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return PartSizes.For(view);
    }

    /// <summary>The drawing in one sentence.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>Such as "Barrel 1 in section, throttle at 11°, plate's edge past 2 of 3 progression holes."</returns>
    public static string Sentence(BarrelSectionView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var at = new SectionGeometry(view);
        var holes = view.Barrel.ProgressionHoles;
        var passed = holes.Count(h => at.HoleY(h.PositionMetres) > at.EdgeY);
        var progression = holes.Count == 0 ? "no progression holes" : $"plate's edge past {passed} of {holes.Count} progression holes";
        return $"Barrel {view.BarrelNumber} in section, throttle at {Shown.Opening(view.ThrottleDegrees)}, {progression}.";
    }

    // What is read aloud begins with what is seen: on the phone that is the number
    private static PartMark Mark(BarrelSectionView view, SectionPart part)
    {
        var name = view.Size == PictureSize.Full ? $"{part.Name}, {part.Size}" : $"{part.Number}, {part.Name}, {part.Size}";
        return new PartMark(part.Key, name, view.PartAddress?.Invoke(part.Key), part.Selected);
    }

    internal static void Draw(IDrawing drawing, BarrelSectionView view)
    {
        var at = new SectionGeometry(view);
        var barrel = view.Barrel;
        AirWayDrawing.Casing(drawing);
        MainSideDrawing.Well(drawing, at);
        IdleSideDrawing.Passages(drawing, at);
        var parts = PartSizes.For(view);
        foreach (var part in parts.OrderBy(p => p.Selected))
        {
            // The body can be tapped as well, but the name is what takes the focus
            using var body = drawing.Part(Mark(view, part) with { Focusable = false });
            SectionBodies.Draw(drawing, view, at, part);
        }

        foreach (var part in parts)
        {
            using var group = drawing.Part(Mark(view, part));
            if (view.Size == PictureSize.Full)
            {
                SectionLabels.Named(drawing, part, at);
            }
            else
            {
                SectionLabels.Numbered(drawing, part, at);
            }
        }

        if (view.Size == PictureSize.Full)
        {
            PlateLens.Draw(drawing, at, barrel);
        }
    }
}
