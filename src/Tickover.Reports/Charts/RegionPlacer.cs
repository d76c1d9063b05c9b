namespace Tickover.Reports.Charts;

/// <summary>Finds room for a label inside a region given on an even grid.</summary>
/// <remarks>A summed-area table (F. C. Crow, SIGGRAPH '84, from memory) tells in four look-ups how much of a box lies in the region.</remarks>
internal sealed class RegionPlacer
{
    // Room round a label beyond this makes it no better placed, drawing units
    private const double MostClearance = 80;
    private const double ClearanceStep = 8;

    // A label that sticks out of a small region is still read as belonging to it while most of it lies inside
    internal const double LeastCover = 0.55;

    // A name further than this from its region is not read as belonging to it, drawing units
    private const double LongestLine = 110;
    private const int CandidateStride = 3;
    private readonly double[] _xs;
    private readonly double[] _ys;
    private readonly int[,] _sums;

    internal RegionPlacer(Field grid, Func<int, int, bool> inRegion)
    {
        (_xs, _ys) = (grid.Xs, grid.Ys);
        _sums = new int[_xs.Length + 1, _ys.Length + 1];
        var (x, y) = (0.0, 0.0);
        for (var i = 0; i < _xs.Length; i++)
        {
            for (var j = 0; j < _ys.Length; j++)
            {
                var inside = inRegion(i, j) ? 1 : 0;
                (x, y) = (x + inside * _xs[i], y + inside * _ys[j]);
                _sums[i + 1, j + 1] = inside + _sums[i, j + 1] + _sums[i + 1, j] - _sums[i, j];
            }
        }

        Middle = new ChartPoint(x / Math.Max(1, Size), y / Math.Max(1, Size));
    }

    /// <summary>Number of grid places in the region.</summary>
    internal int Size => _sums[_xs.Length, _ys.Length];

    /// <summary>The middle of the region; it may lie outside a bent one.</summary>
    internal ChartPoint Middle { get; }

    /// <summary>The best free box of a size: wholly inside with most room round it, else mostly inside; null where there is no room.</summary>
    internal Box? Find(double width, double height, LabelBoard board, double leastCover = LeastCover)
    {
        (double Score, Box Box)? best = null;
        foreach (var place in Size > 0 ? Candidates() : [])
        {
            best = Better(best, Box.Around(place, width, height), board, leastCover);
        }

        return best?.Box;
    }

    /// <summary>The nearest free box beside the region with a clear line to it; null where there is none near by.</summary>
    internal Box? FindBeside(double width, double height, LabelBoard board)
    {
        var near = LongestLine * LongestLine;
        foreach (var place in Size > 0 ? Candidates().TakeWhile(p => Squared(p, Middle) < near) : [])
        {
            var box = Box.Around(place, width, height);
            if (Cover(box.Grown(ClearanceStep)) == 0 && board.IsFree(box.Grown(2)) && board.IsFree(box.Centre, Middle))
            {
                return box;
            }
        }

        return null;
    }

    // From the middle outwards, so that of equal places the nearest to it is taken
    private IEnumerable<ChartPoint> Candidates()
    {
        var places = new List<(double Distance, ChartPoint Place)>();
        for (var i = 0; i < _xs.Length; i += CandidateStride)
        {
            for (var j = 0; j < _ys.Length; j += CandidateStride)
            {
                var place = new ChartPoint(_xs[i], _ys[j]);
                places.Add((Squared(place, Middle), place));
            }
        }

        places.Sort((a, b) => a.Distance.CompareTo(b.Distance));
        return places.Select(p => p.Place);
    }

    private (double Score, Box Box)? Better((double Score, Box Box)? best, Box box, LabelBoard board, double leastCover)
    {
        if (!CanBeat(best?.Score ?? 0, box) || !board.IsFree(box))
        {
            return best;
        }

        var score = Score(box);
        return score >= leastCover && score > (best?.Score ?? 0) ? (score, box) : best;
    }

    // One look-up spares the full score of nearly every place
    private bool CanBeat(double score, Box box) =>
        score < 1 ? Cover(box) > score : score - 1 < MostClearance && Cover(box.Grown(score - 1 + ClearanceStep)) >= 1;

    // Below one: the part covered. Above: one and the clearance in steps.
    private double Score(Box box)
    {
        var cover = Cover(box);
        if (cover < 1)
        {
            return cover;
        }

        var clearance = 0.0;
        while (clearance < MostClearance && Cover(box.Grown(clearance + ClearanceStep)) >= 1)
        {
            clearance += ClearanceStep;
        }

        return 1 + clearance;
    }

    private double Cover(Box box)
    {
        var (i0, i1) = (Index(_xs, box.Left), Index(_xs, box.Right) + 1);
        var (j0, j1) = (Index(_ys, box.Top), Index(_ys, box.Bottom) + 1);
        var outside = box.Left < _xs[0] || box.Right > _xs[^1] || box.Top < _ys[0] || box.Bottom > _ys[^1];
        var inside = _sums[i1, j1] - _sums[i0, j1] - _sums[i1, j0] + _sums[i0, j0];
        var part = (double)inside / ((i1 - i0) * (j1 - j0));
        // The picture's own border is an edge like any other, so a label does not hug it
        return outside ? Math.Min(part, 0.99) : part;
    }

    private static double Squared(ChartPoint a, ChartPoint b) => (a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y);

    private static int Index(double[] places, double place)
    {
        var part = (place - places[0]) / (places[^1] - places[0]);
        return (int)Math.Clamp(Math.Round(part * (places.Length - 1)), 0, places.Length - 1);
    }
}
