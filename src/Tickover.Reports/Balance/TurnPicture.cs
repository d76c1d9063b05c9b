using Tickover.Reports.Charts;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Reports.Balance;

/// <summary>One thing to turn, large, for the card of the next move: the old slot dashed, the new one solid; a rod with arrows.</summary>
public static class TurnPicture
{
    private const double Size = 96;
    private const double Head = 33;
    private const double OldSlot = 0;
    private const double LargestSweep = 320;
    private static readonly ChartPoint Centre = new(48, 52);

    /// <summary>Draws the turn.</summary>
    /// <param name="adjuster">What is turned.</param>
    /// <param name="turns">How far, positive as <see cref="Adjuster"/> counts.</param>
    /// <param name="prefix">Begins every id inside.</param>
    /// <returns>One svg element.</returns>
    public static string ToSvg(Adjuster adjuster, double turns, string prefix)
    {
        ArgumentNullException.ThrowIfNull(adjuster);
        var drawing = new SvgDrawing(prefix);
        Draw(drawing, adjuster, turns);
        return drawing.ToSvg(new SvgFrame { Width = Size, Height = Size, ClassName = "turn-picture", Label = $"{adjuster.Thing} turned {Word(adjuster, turns)}" });
    }

    internal static void Draw(IDrawing drawing, Adjuster adjuster, double turns)
    {
        switch (adjuster.Kind)
        {
            case AdjusterKind.LinkRod or AdjusterKind.BankRod:
                Rod(drawing, string.Equals(Word(adjuster, turns), "shorter", StringComparison.Ordinal));
                break;
            case AdjusterKind.JetNut or AdjusterKind.LeverClamp:
                Nut(drawing, adjuster.Kind == AdjusterKind.JetNut && string.Equals(Word(adjuster, turns), "down", StringComparison.Ordinal) ? 1 : -1);
                break;
            default:
                Screw(drawing, AdjusterDrawing.IsClockwise(adjuster, turns) == false ? -Math.Abs(turns) : Math.Abs(turns));
                break;
        }
    }

    private static string Word(Adjuster adjuster, double turns) => turns >= 0 ? adjuster.More : adjuster.Less;

    private static void Screw(IDrawing drawing, double clockwiseTurns)
    {
        drawing.Circle(Centre, Head, Look.Outlined(Paint.Metal, Paint.MetalEdge));
        Slot(drawing, OldSlot, Look.Line(Paint.MetalEdge, 3) with { Dashes = (3, 4) });
        Slot(drawing, OldSlot + 360 * clockwiseTurns, Look.Line(Paint.Mark, 8));
        var sweep = Math.Clamp(360 * clockwiseTurns, -LargestSweep, LargestSweep);
        Arcs.Draw(drawing, Arcs.Arrow(Centre, Head + 9, OldSlot, Math.Abs(sweep) < 20 ? Math.Sign(sweep) * 20 : sweep, 9), Paint.Mark, 4);
    }

    private static void Slot(IDrawing drawing, double degrees, Look look) =>
        drawing.Line(Arcs.At(Centre, Head - 6, degrees), Arcs.At(Centre, Head - 6, degrees + 180), look);

    private static void Nut(IDrawing drawing, int down)
    {
        drawing.Path([AdjusterDrawing.Hexagon(Centre, Head)], new Look { Fill = Paint.Metal, Stroke = Paint.MetalEdge, Width = 1.5 });
        Arcs.Draw(drawing, Arcs.Arrow(new ChartPoint(Centre.X, Centre.Y - down * 22), new ChartPoint(Centre.X, Centre.Y + down * 22), 14), Paint.Mark, 6);
    }

    private static void Rod(IDrawing drawing, bool isShorter)
    {
        var (left, right) = (new ChartPoint(8, Centre.Y), new ChartPoint(88, Centre.Y));
        drawing.Line(left, right, Look.Line(Paint.MetalEdge, 6));
        drawing.Circle(left, 7, Look.Outlined(Paint.Surface, Paint.MetalEdge));
        drawing.Circle(right, 7, Look.Outlined(Paint.Surface, Paint.MetalEdge));
        drawing.Plate(Box.Around(Centre, 30, 24), 3, Look.Outlined(Paint.Mark, Paint.Mark));
        foreach (var side in new[] { -1, 1 })
        {
            ChartPoint At(double along) => new(Centre.X + side * along, Centre.Y + 30);
            Arcs.Draw(drawing, isShorter ? Arcs.Arrow(At(38), At(10), 10) : Arcs.Arrow(At(10), At(38), 10), Paint.Mark, 4);
        }
    }
}
