using Tickover.Reports.Charts;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>Writes the words and figures on the map where there is room for them.</summary>
internal sealed class MapLabels(IDrawing drawing, MapFrame frame, PictureSize size)
{
    // A region smaller than this many fine places is a trace at the edge and gets no name
    private const int LeastPlaces = 60;
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
            var placer = new RegionPlacer(field.Lambda, (i, j) => field.HasAnswer(i, j) && field.Feeding.At(i, j) == circuit);
            Pill(placer, Name(circuit), Paint.Surface, Paint.Ink);
        }

        NoAnswers(field);
    }

    /// <summary>Says in each region without an answer why.</summary>
    internal void NoAnswers(MapField field)
    {
        foreach (var reason in field.Reasons)
        {
            var placer = new RegionPlacer(field.Lambda, (i, j) => field.Why(i, j) == reason);
            var lettering = new Lettering { Size = Full ? 15 : 14, Paint = Paint.Ink2, Halo = Paint.Surface };
            Words(placer, [[reason.Words], [reason.ShortWords], Broken(reason.Words), Broken(reason.ShortWords)], lettering);
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
        Words(none, [["no change"]], new Lettering { Size = Full ? 15 : 14, Paint = Paint.Data("#222222") });
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
        Pill(placer, words, Paint.Black, Paint.White);
    }

    private void Pill(RegionPlacer placer, string words, Paint ground, Paint letters)
    {
        if (placer.Size < LeastPlaces || placer.Find(_name.WidthOf(words) + 16, _name.Size + 11, _board) is not { } box)
        {
            return;
        }

        _board.Take(box.Grown(4));
        drawing.Plate(box, 4, Look.Filled(ground) with { Opacity = 0.94 });
        Write(words, box, _name with { Paint = letters });
    }

    private void Words(RegionPlacer placer, IReadOnlyList<string[]> variants, Lettering lettering)
    {
        if (placer.Size < LeastPlaces)
        {
            return;
        }

        foreach (var lines in variants)
        {
            var lineHeight = lettering.Size * 1.25;
            if (placer.Find(lines.Max(lettering.WidthOf) + 8, lines.Length * lineHeight + 4, _board) is not { } box)
            {
                continue;
            }

            _board.Take(box);
            for (var k = 0; k < lines.Length; k++)
            {
                Write(lines[k], new Box(box.Left, box.Top + 2 + k * lineHeight, box.Width, lineHeight), lettering);
            }

            return;
        }
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
