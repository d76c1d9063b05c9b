using Tickover.Reports.Charts;

namespace Tickover.Reports.Mixture;

/// <summary>Outlines of the coloured part of a map, and of the patches in it that have no answer.</summary>
internal sealed class MapArea
{
    private const double Tolerance = 0.1;

    /// <summary>Traces the outlines.</summary>
    /// <param name="runs">Zero or above where the engine runs.</param>
    /// <param name="unsettled">Above zero where the computation did not settle.</param>
    internal MapArea(Field runs, Field unsettled)
    {
        Outline = Simplification.Simplify(ContourTracer.Areas(runs, 0), Tolerance);
        // A patch ends where the engine ends
        Patches = Simplification.Simplify(
            ContourTracer.Areas(runs.Map((i, j) => Math.Min(runs.Values[i, j], unsettled.Values[i, j])), 0), Tolerance);
    }

    internal IReadOnlyList<Polyline> Outline { get; }

    internal IReadOnlyList<Polyline> Patches { get; }

    /// <summary>Hatches what did not settle. The field runs on under it, so that no contour bends round a gap.</summary>
    internal void DrawPatches(IDrawing drawing)
    {
        drawing.Path(Patches, Look.Filled(Paint.Surface));
        drawing.Path(Patches, new Look { Fill = Paint.Hatched(Hatch.NoAnswer), Stroke = Paint.Ink2, Width = 1.5, Dashes = (4, 3) });
    }
}
