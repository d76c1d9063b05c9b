using Tickover.Physics.Tanks;

namespace Tickover.Workshop.Tanks.Sketching;

/// <summary>A tank's outline while it is sketched: corners as they are seen, right and up, whatever the view.</summary>
/// <remarks>From the side it is seen with the front at the right, from behind with the left at the left, in plan with the front at the top.</remarks>
public sealed record OutlineSketch
{
    /// <summary>Most corners a sketch has.</summary>
    public const int MostCorners = 40;

    // Sides that face one another are square to within what a finger sets.
    private const double FacingSine = 0.035;

    /// <summary>From where it is seen.</summary>
    public OutlineView View { get; init; }

    /// <summary>The corners, one after the other.</summary>
    public IReadOnlyList<SketchCorner> Corners { get; init; } = [];

    /// <summary>How far the tank runs on along the line of sight, mm; null while it is not known.</summary>
    public double? Depth { get; init; }

    /// <summary>Thickness of the sheet where the outside was measured, mm; 0 where the inside was.</summary>
    public double Wall { get; init; }

    /// <summary>What the tank is called.</summary>
    public string Name { get; init; } = string.Empty;

    /// <summary>Where the tank's own point is on the car, mm ahead, to the left, up.</summary>
    public (double Ahead, double Left, double Up) At { get; init; }

    /// <summary>What the maker states it holds, or what was filled, l; null where nobody did.</summary>
    public double? Stated { get; init; }

    /// <summary>Length of a side, mm.</summary>
    /// <param name="side">Number of the corner it begins at, from 0.</param>
    /// <returns>mm.</returns>
    public double Side(int side) => Distance(Corners[side], Corners[(side + 1) % Corners.Count]);

    /// <summary>The sketch with one side of another length. The corners beyond move along until a side that faces it takes up the change; where none does, its far corner moves alone.</summary>
    /// <param name="side">Number of the corner it begins at, from 0.</param>
    /// <param name="length">mm, above zero.</param>
    /// <returns>The sketch so changed; unchanged where the side has no direction.</returns>
    public OutlineSketch WithSide(int side, double length)
    {
        var n = Corners.Count;
        var now = n < 2 ? 0 : Side(side);
        if (now <= 0 || length <= 0)
        {
            return this;
        }

        var (x, y) = Way(side);
        var (byX, byY) = ((length - now) * x / now, (length - now) * y / now);
        var facing = Enumerable.Range(1, n - 2 > 0 ? n - 2 : 0).FirstOrDefault(k => IsFacing(Way((side + k) % n), (x, y)));
        var moving = Enumerable.Range(1, Math.Max(1, facing)).Select(k => (side + k) % n).ToHashSet();
        return this with { Corners = [.. Corners.Select((c, i) => moving.Contains(i) ? c with { Right = Round(c.Right + byX), Up = Round(c.Up + byY) } : c)] };
    }

    /// <summary>The sketch with a corner in the middle of a side.</summary>
    /// <param name="side">Number of the corner the side begins at, from 0.</param>
    /// <returns>The sketch so changed.</returns>
    public OutlineSketch WithCornerIn(int side)
    {
        var (from, to) = (Corners[side], Corners[(side + 1) % Corners.Count]);
        var middle = new SketchCorner(Round((from.Right + to.Right) / 2), Round((from.Up + to.Up) / 2));
        return this with { Corners = [.. Corners.Take(side + 1), middle, .. Corners.Skip(side + 1)] };
    }

    /// <summary>The sketch without a corner.</summary>
    /// <param name="corner">Its number, from 0.</param>
    /// <returns>The sketch so changed.</returns>
    public OutlineSketch Without(int corner) => this with { Corners = [.. Corners.Where((_, i) => i != corner)] };

    /// <summary>The corners in the view's own axes as a tank document and the physics have them, m.</summary>
    /// <returns>Across and up.</returns>
    public IReadOnlyList<OutlinePoint> Points() => [.. Corners.Select(c =>
    {
        var (across, up) = ToView(View, c);
        return new OutlinePoint(TankUnits.Metres(across), TankUnits.Metres(up), TankUnits.Metres(c.Radius));
    })];

    /// <summary>A seen corner in the axes of a view: ahead and up, left and up, or ahead and left.</summary>
    internal static (double Across, double Up) ToView(OutlineView view, SketchCorner c) => view switch
    {
        OutlineView.Rear => (0 - c.Right, c.Up),
        OutlineView.Plan => (c.Up, 0 - c.Right),
        _ => (c.Right, c.Up),
    };

    /// <summary>The way back.</summary>
    internal static SketchCorner FromView(OutlineView view, double across, double up, double radius) => view switch
    {
        OutlineView.Rear => new SketchCorner(0 - across, up, radius),
        OutlineView.Plan => new SketchCorner(0 - up, across, radius),
        _ => new SketchCorner(across, up, radius),
    };

    private static double Distance(SketchCorner a, SketchCorner b) => Math.Sqrt((b.Right - a.Right) * (b.Right - a.Right) + (b.Up - a.Up) * (b.Up - a.Up));

    private static bool IsFacing((double X, double Y) a, (double X, double Y) b)
    {
        var lengths = Math.Sqrt((a.X * a.X + a.Y * a.Y) * (b.X * b.X + b.Y * b.Y));
        return lengths > 0 && Math.Abs(a.X * b.Y - a.Y * b.X) <= FacingSine * lengths;
    }

    // Tenths of a millimetre are more than a tape shows.
    private static double Round(double millimetres) => Math.Round(millimetres, 1);

    private (double X, double Y) Way(int side)
    {
        var (a, b) = (Corners[side], Corners[(side + 1) % Corners.Count]);
        return (b.Right - a.Right, b.Up - a.Up);
    }
}
