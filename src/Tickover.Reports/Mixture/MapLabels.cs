using Tickover.Reports.Charts;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>Writes the words and figures on the map where there is room for them.</summary>
internal sealed class MapLabels(IDrawing drawing, MapFrame frame, PictureSize size)
{
    // A region smaller than this many fine places is a trace at the edge and gets no name
    private const int LeastPlaces = 60;

    // One computed point without an answer covers some of these; it is told beside it
    private const int LeastTold = 12;
    private readonly LabelBoard _board = new(frame.Plot.Grown(-3));
    private readonly Lettering _name = new() { Size = size == PictureSize.Full ? 16 : 14, Bold = true };

    private bool Full => size == PictureSize.Full;

    /// <summary>Keeps words off a round mark.</summary>
    internal void Keep(ChartPoint place, double radius) => _board.Take(Box.Around(place, 2 * radius + 6, 2 * radius + 6));

    /// <summary>Names the regions beyond the target, those of the circuits and those without an answer.</summary>
    internal void Regions(MapField field)
    {
        Beyond("Too lean", field, field.TooLean);
        Beyond("Too rich", field, field.TooRich);
        foreach (var circuit in Enum.GetValues<FuelCircuit>())
        {
            bool Feeds(int i, int j) => field.HasAnswer(i, j) && field.Feeding.At(i, j) == circuit;
            bool OnTarget(int i, int j) => field.TooLean.Values[i, j] < 0 && field.TooRich.Values[i, j] < 0;
            // Clear of the target's edge where there is room, else anywhere in its region
            _ = Pill(new RegionPlacer(field.Lambda, (i, j) => Feeds(i, j) && OnTarget(i, j)), Name(circuit), Paint.Surface, 1)
                || Pill(new RegionPlacer(field.Lambda, Feeds), Name(circuit), Paint.Surface);
        }

        NoAnswers(field);
    }

    /// <summary>Says in each region without an answer why.</summary>
    internal void NoAnswers(MapField field)
    {
        var lettering = new Lettering { Size = Full ? 15 : 14, Paint = Paint.Ink2 };
        var untold = new List<(RegionPlacer Placer, string Words)>();
        foreach (var reason in field.Reasons)
        {
            var placer = new RegionPlacer(field.Lambda, (i, j) => field.Why(i, j) == reason);
            if (!Words(placer, [[reason.Words], [reason.ShortWords], Broken(reason.Words), Broken(reason.ShortWords)], lettering))
            {
                untold.Add((placer, reason.ShortWords));
            }
        }

        // Those with room of their own come first
        foreach (var (placer, words) in untold)
        {
            Beside(placer, words, Paint.Surface);
        }
    }

    /// <summary>Writes each contour's figure on it, once or, on a long one, at its best place only.</summary>
    internal void Contours(IReadOnlyList<(double Level, Polyline Line)> contours, MapField field)
    {
        var lettering = new Lettering { Size = Full ? 15 : 14, Bold = true, Paint = Paint.White, Halo = Paint.Data("#12303f") };
        // λ = 1 gets its figure before the room is taken
        foreach (var level in contours.GroupBy(c => c.Level).OrderByDescending(l => l.Key == 1))
        {
            Figure(Shown.Lambda(level.Key), level.Select(c => c.Line), lettering, field.HasAnswer);
        }
    }

    /// <summary>Writes beside each reading that is off by more than chance explains by how much, the worst first, where there is room.</summary>
    internal void Deviations(IReadOnlyList<MeasuredPoint> measured)
    {
        var shown = measured.Where(p => double.IsFinite(p.Lambda)).Select(p => (Point: p, Place: frame.Place(p.Spot), Radius: MapMarks.RadiusFor(p.Count, size) + 3)).ToList();
        foreach (var (point, place, radius) in shown.Where(p => p.Point.Off is not null))
        {
            _board.Take(Box.Around(place, 2 * radius, 2 * radius));
        }

        var figure = new Lettering { Size = 14, Bold = true, Paint = Paint.White, Halo = Paint.Black };
        foreach (var (point, place, radius) in shown.Where(p => p.Point.Off is not null).OrderByDescending(p => Math.Abs(p.Point.Off!.Value)))
        {
            var text = Shown.LambdaDifference(point.Off!.Value);
            var (width, height) = (figure.WidthOf(text), figure.Size);
            ChartPoint[] places = [place with { X = place.X + radius + width / 2 + 3 }, place with { X = place.X - radius - width / 2 - 3 }, place with { Y = place.Y - radius - height / 2 - 2 }, place with { Y = place.Y + radius + height / 2 + 2 }];
            if (places.Select(p => (Box?)Box.Around(p, width, height)).FirstOrDefault(b => _board.IsFree(b!.Value)) is { } box)
            {
                _board.Take(box);
                Write(text, box, figure);
            }
        }
    }

    /// <summary>Writes the figures of a difference and names where nothing changes.</summary>
    internal void Change(DifferenceField field, IReadOnlyList<(double Level, Polyline Line)> contours)
    {
        var figures = new Lettering { Size = Full ? 15 : 14, Bold = true, Paint = Paint.Black, Halo = Paint.White };
        foreach (var level in contours.GroupBy(c => c.Level))
        {
            Figure(Shown.LambdaDifference(level.Key), level.Select(c => c.Line), figures, field.HasAnswer);
        }

        var none = new RegionPlacer(
            field.Change, (i, j) => field.HasAnswer(i, j) && Math.Abs(field.Change.Values[i, j]) < DifferenceField.NoChange);
        var lettering = new Lettering { Size = Full ? 15 : 14, Paint = Paint.Data("#222222") };
        const string words = "no change";
        if (none.Find(lettering.WidthOf(words) + 8, lettering.Size + 6, _board, leastCover: 0.95) is { } box)
        {
            _board.Take(box);
            Write(words, box, lettering);
        }
    }

    internal static string Name(FuelCircuit circuit) => circuit switch
    {
        FuelCircuit.Idle => "Idle",
        FuelCircuit.Progression => "Progression",
        FuelCircuit.Main => "Main",
        _ => "Main, corrector leaning",
    };

    // A level may run in several pieces; the longest that has room takes the figure
    private void Figure(string text, IEnumerable<Polyline> lines, Lettering lettering, Func<ChartPoint, bool> answers)
    {
        foreach (var line in lines.OrderByDescending(l => l.Length()).Take(2))
        {
            if (ContourLabels.Find(line, (lettering.WidthOf(text), lettering.Size), _board, answers) is { } box)
            {
                _board.Take(box.Grown(6));
                Write(text, box, lettering);
                return;
            }
        }
    }

    private void Beyond(string words, MapField field, Field beyond)
    {
        var placer = new RegionPlacer(field.Lambda, (i, j) => field.HasAnswer(i, j) && beyond.Values[i, j] >= 0);
        if (!Pill(placer, words, Paint.Black) && placer.Size >= LeastPlaces)
        {
            Beside(placer, words, Paint.Black);
        }
    }

    private bool Pill(RegionPlacer placer, string words, Paint ground, double leastCover = RegionPlacer.LeastCover)
    {
        if (placer.Size < LeastPlaces || placer.Find(_name.WidthOf(words) + 16, _name.Size + 11, _board, leastCover) is not { } box)
        {
            return false;
        }

        Pill(box, words, ground);
        return true;
    }

    private void Pill(Box box, string words, Paint ground)
    {
        _board.Take(box.Grown(4));
        drawing.Plate(box, 4, Look.Filled(ground) with { Opacity = 0.94 });
        Write(words, box, _name with { Paint = ground == Paint.Black ? Paint.White : Paint.Ink });
    }

    // A region too small for its words has them beside it, with a line
    private void Beside(RegionPlacer placer, string words, Paint ground)
    {
        if (placer.Size < LeastTold || placer.FindBeside(_name.WidthOf(words) + 16, _name.Size + 11, _board) is not { } box)
        {
            return;
        }

        drawing.Line(box.Centre, placer.Middle, Look.Line(Paint.Surface, 5));
        drawing.Line(box.Centre, placer.Middle, Look.Line(Paint.Ink, 2));
        Pill(box, words, ground);
    }

    private bool Words(RegionPlacer placer, IReadOnlyList<string[]> variants, Lettering lettering)
    {
        var lineHeight = lettering.Size * 1.25;
        foreach (var lines in placer.Size < LeastPlaces ? [] : variants)
        {
            if (placer.Find(lines.Max(lettering.WidthOf) + 8, lines.Length * lineHeight + 4, _board) is not { } box)
            {
                continue;
            }

            _board.Take(box);
            // Hatching runs black in daylight, so words stand on a plate
            drawing.Plate(box, 4, Look.Filled(Paint.Surface) with { Opacity = 0.85 });
            for (var k = 0; k < lines.Length; k++)
            {
                Write(lines[k], new Box(box.Left, box.Top + 2 + k * lineHeight, box.Width, lineHeight), lettering);
            }

            return true;
        }

        return false;
    }

    private void Write(string text, Box box, Lettering lettering) =>
        // Capitals stand about 0.7 of the size high, so the baseline lies 0.35 below the middle
        drawing.Text(text, new ChartPoint(box.Centre.X, box.Centre.Y + 0.35 * lettering.Size), lettering);

    private static string[] Broken(string words)
    {
        var middle = words.Length / 2;
        var at = Enumerable.Range(0, words.Length).Where(k => words[k] == ' ').OrderBy(k => Math.Abs(k - middle)).FirstOrDefault(-1);
        return at < 0 ? [words] : [words[..at], words[(at + 1)..]];
    }
}
