using System.Globalization;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Balance;

/// <summary>The engine from above: carburettors where they stand, a ring at each barrel, the thing to turn marked with the way round.</summary>
/// <remarks>A diagram: the order and the sides are right, distances are not to scale.</remarks>
public static class EnginePicture
{
    private static readonly Look Casting = Look.Outlined(Paint.Theme("metal-2"), Paint.MetalEdge);
    private static readonly Look Body = Look.Outlined(Paint.Metal, Paint.MetalEdge);
    private static readonly Look Touch = Look.Filled(Paint.Data("transparent"));

    /// <summary>Draws the engine.</summary>
    /// <param name="view">What to show.</param>
    /// <returns>One svg element; rings and adjusters are links with their key in <c>data-part</c> where the view gives addresses.</returns>
    public static string ToSvg(EngineView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var at = EngineGeometry.Of(view.Plan, view.Size);
        var drawing = new SvgDrawing(view.IdPrefix);
        Draw(drawing, view, at);
        return drawing.ToSvg(new SvgFrame { Width = at.Width, Height = at.Height, ClassName = "engine-picture", Role = view.PartAddress is null ? "img" : "group", Label = Sentence(view) });
    }

    /// <summary>The drawing in one sentence.</summary>
    /// <param name="view">What is shown.</param>
    /// <returns>Such as "Larkfield Tern 2800 from above: 6 barrels, 6 read, 1 low, 0 high."</returns>
    public static string Sentence(EngineView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var read = view.Rings.Count(r => r.Figure.Length > 0);
        var marked = view.Mark is { } mark && view.Plan.Find(mark.Adjuster) is { } adjuster ? $" To turn: {adjuster.Where}, {adjuster.Thing}, {(mark.Turns >= 0 ? adjuster.More : adjuster.Less)}." : "";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{view.Plan.Name} from above: {view.Plan.Barrels.Count} barrels, {read} read, {view.Rings.Count(r => r.Standing == RingStanding.Low)} low, {view.Rings.Count(r => r.Standing == RingStanding.High)} high.{marked}");
    }

    /// <summary>The rings as a table.</summary>
    /// <param name="view">What is shown.</param>
    /// <param name="unit">Unit of the figures.</param>
    /// <returns>A row a barrel.</returns>
    public static PictureTable Table(EngineView view, string unit)
    {
        ArgumentNullException.ThrowIfNull(view);
        return new PictureTable($"Air per barrel, {unit}", ["Barrel", unit, "of mean", "by the limit"], [.. view.Plan.Barrels.Select(b =>
        {
            var ring = RingOf(view, b.Number);
            var (percent, word) = RingDrawing.Words(ring with { IsNext = false });
            return (IReadOnlyList<string>)[b.Number.ToString(CultureInfo.InvariantCulture), ring.Figure, percent, word.Length > 0 ? word : ring.Standing == RingStanding.Within ? "within" : "not read"];
        })]);
    }

    internal static void Draw(IDrawing drawing, EngineView view, EngineGeometry at)
    {
        Engine(drawing, at);
        foreach (var place in at.Adjusters.OrderBy(a => IsMarked(view, a)))
        {
            using var part = view.PartAddress is null ? null : drawing.Part(new PartMark(place.Adjuster.Key, $"{place.Adjuster.Where}, {place.Adjuster.Thing}", view.PartAddress(place.Adjuster.Key), IsMarked(view, place)));
            AdjusterDrawing.Draw(drawing, place, IsMarked(view, place) ? view.Mark!.Turns : null, view.RodsOff && place.Form == AdjusterForm.Rod);
            drawing.Path([TouchArea.Of(place, at.Adjusters)], Touch);
        }

        foreach (var barrel in view.Plan.Barrels)
        {
            var ring = RingOf(view, barrel.Number);
            using var part = view.PartAddress is null ? null : drawing.Part(RingPart(view, ring));
            RingDrawing.Draw(drawing, ring, at.Rings[barrel.Number], at.RingReach);
            RingLabels.Draw(drawing, at, ring, at.Rings[barrel.Number]);
        }
    }

    private static PartMark RingPart(EngineView view, RingView ring)
    {
        var key = string.Create(CultureInfo.InvariantCulture, $"barrel:{ring.Barrel}");
        var (percent, word) = RingDrawing.Words(ring);

        // What is read aloud holds what is seen, word for word and in its order
        var said = string.Join(" ", new[] { ring.Figure, percent, word }.Where(w => w.Length > 0));
        return new PartMark(key, string.Create(CultureInfo.InvariantCulture, $"Barrel {ring.Barrel} {(said.Length > 0 ? said : "not read")}"), view.PartAddress!(key), ring.IsNext);
    }

    private static void Engine(IDrawing drawing, EngineGeometry at)
    {
        foreach (var head in at.Heads)
        {
            drawing.Plate(head, 10, Body);
        }

        drawing.Path(at.Castings, Casting);
        foreach (var body in at.Bodies)
        {
            drawing.Plate(body, 8, Body);
        }

        foreach (var (from, to) in at.Spindles)
        {
            drawing.Line(from, to, Look.Line(Paint.MetalEdge, 5));
            drawing.Line(from, to, Look.Line(Paint.Metal, 2));
        }

        foreach (var (cylinder, place) in at.Cylinders)
        {
            drawing.Circle(place, at.CylinderRadius, Look.Outlined(Paint.Surface, Paint.MetalEdge));
            drawing.Text(cylinder.ToString(CultureInfo.InvariantCulture), place with { Y = place.Y + 5 }, new Lettering { Bold = true });
        }

        foreach (var (from, to) in at.Air)
        {
            Arcs.Draw(drawing, Arcs.Arrow(from, to, 8), Paint.AirEdge, 3);
        }

        foreach (var word in at.Words)
        {
            drawing.Text(word.Text, word.At, new Lettering { Size = word.Size, Bold = word.Bold });
        }

        Arcs.Draw(drawing, Arcs.Arrow(at.Front.From, at.Front.To, 8), Paint.Ink2, 2);
    }

    private static RingView RingOf(EngineView view, int barrel) => view.Rings.FirstOrDefault(r => r.Barrel == barrel) ?? new RingView(barrel);

    private static bool IsMarked(EngineView view, AdjusterPlace place) => string.Equals(view.Mark?.Adjuster, place.Adjuster.Key, StringComparison.OrdinalIgnoreCase);
}
