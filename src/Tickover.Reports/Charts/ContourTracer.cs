namespace Tickover.Reports.Charts;

/// <summary>Follows the lines of equal value through a field by marching squares; one tracer serves many levels.</summary>
/// <remarks>
/// Lines run with the higher side on the same hand, so that each edge of the grid has one line coming in and one going out and
/// chaining is a walk. A saddle is decided by the value where the cell's bilinear surface has its saddle point
/// (G. M. Nielson, B. Hamann, "The asymptotic decider", Proc. Visualization '91, 83-91; from memory). Cells with a NaN corner are left out.
/// </remarks>
internal sealed class ContourTracer
{
    private const int None = -1;
    private readonly Field _field;
    private readonly int[] _next;
    private readonly int[] _previous;
    private readonly List<int> _touched = [];
    private readonly double[] _lowest;
    private readonly double[] _highest;
    private double _level;

    internal ContourTracer(Field field)
    {
        _field = field;
        (_lowest, _highest) = Ranges(field);
        _next = new int[2 * field.Columns * field.Rows];
        _previous = new int[_next.Length];
        Array.Fill(_next, None);
        Array.Fill(_previous, None);
    }

    /// <summary>The outlines of everything at or above a level, closed at the field's border, holes the other way round.</summary>
    internal static IReadOnlyList<Polyline> Areas(Field field, double level) =>
        new ContourTracer(Enclosed(field)).Trace(level);

    /// <summary>The field inside a ring of very low value: the lines of this field are outlines of areas.</summary>
    internal static Field Enclosed(Field field) => field.Ringed(-1e12);

    /// <summary>All lines at a level: open ones end at the border or at a gap.</summary>
    internal IReadOnlyList<Polyline> Trace(double level)
    {
        _level = level;
        for (var cell = 0; cell < _lowest.Length; cell++)
        {
            if (_lowest[cell] < level && level <= _highest[cell])
            {
                MarchCell(cell % _field.Columns, cell / _field.Columns);
            }
        }

        return Chain();
    }

    // Most cells are passed over at most levels, so the range of each is kept; the last column and row are no cells
    private static (double[] Lowest, double[] Highest) Ranges(Field field)
    {
        var v = field.Values;
        var (lowest, highest) = (new double[field.Columns * field.Rows], new double[field.Columns * field.Rows]);
        Array.Fill(lowest, double.PositiveInfinity);
        Array.Fill(highest, double.NegativeInfinity);
        for (var i = 0; i < field.Columns - 1; i++)
        {
            for (var j = 0; j < field.Rows - 1; j++)
            {
                var (a, b, c, d) = (v[i, j], v[i + 1, j], v[i + 1, j + 1], v[i, j + 1]);
                // A NaN corner makes both NaN, and no level passes the test
                lowest[j * field.Columns + i] = Math.Min(Math.Min(a, b), Math.Min(c, d));
                highest[j * field.Columns + i] = Math.Max(Math.Max(a, b), Math.Max(c, d));
            }
        }

        return (lowest, highest);
    }

    private void MarchCell(int i, int j)
    {
        var v = _field.Values;
        var (a, b, c, d) = (v[i, j], v[i + 1, j], v[i + 1, j + 1], v[i, j + 1]);
        var mask = (a >= _level ? 1 : 0) | (b >= _level ? 2 : 0) | (c >= _level ? 4 : 0) | (d >= _level ? 8 : 0);
        var (top, right, bottom, left) = (Across(i, j), Down(i + 1, j), Across(i, j + 1), Down(i, j));
        switch (mask)
        {
            case 5:
                Saddle((a, b, c, d), (left, top), (right, bottom), (left, bottom), (right, top));
                break;
            case 10:
                Saddle((b, a, d, c), (top, right), (bottom, left), (top, left), (bottom, right));
                break;
            default:
                var (from, to) = Simple(mask, top, right, bottom, left);
                Join(from, to);
                break;
        }
    }

    // Corners: 1 top left, 2 top right, 4 bottom right, 8 bottom left. The higher side lies to the left of the walk.
    private static (int From, int To) Simple(int mask, int top, int right, int bottom, int left) => mask switch
    {
        1 => (left, top),
        2 => (top, right),
        3 => (left, right),
        4 => (right, bottom),
        6 => (top, bottom),
        7 => (left, bottom),
        8 => (bottom, left),
        9 => (bottom, top),
        11 => (bottom, right),
        12 => (right, left),
        13 => (right, top),
        _ => (top, left),
    };

    // High corners p and r face each other; apart they are cut off one by one, joined the low corners are
    private void Saddle(
        (double P, double Q, double R, double S) v, (int, int) cutP, (int, int) cutR, (int, int) cutLow1, (int, int) cutLow2)
    {
        var atSaddle = (v.P * v.R - v.Q * v.S) / (v.P + v.R - v.Q - v.S);
        var joined = atSaddle >= _level;
        var (first, second) = joined ? (cutLow1, cutLow2) : (cutP, cutR);
        Join(first.Item1, first.Item2);
        Join(second.Item1, second.Item2);
    }

    private void Join(int from, int to)
    {
        _next[from] = to;
        _previous[to] = from;
        _touched.Add(from);
        _touched.Add(to);
    }

    private List<Polyline> Chain()
    {
        var lines = new List<Polyline>();
        foreach (var edge in _touched.Where(e => _previous[e] == None))
        {
            Walk(edge, lines);
        }

        foreach (var edge in _touched)
        {
            Walk(edge, lines);
        }

        foreach (var edge in _touched)
        {
            _next[edge] = _previous[edge] = None;
        }

        _touched.Clear();
        return lines;
    }

    private void Walk(int start, List<Polyline> lines)
    {
        if (_next[start] == None)
        {
            return;
        }

        var points = new List<ChartPoint>();
        var edge = start;
        while (edge != None)
        {
            var point = Crossing(edge);
            if (points.Count == 0 || point != points[^1])
            {
                points.Add(point);
            }

            (var following, _next[edge]) = (_next[edge], None);
            if (following == start)
            {
                Keep(points, closed: true, lines);
                return;
            }

            edge = following;
        }

        Keep(points, closed: false, lines);
    }

    private static void Keep(List<ChartPoint> points, bool closed, List<Polyline> lines)
    {
        if (closed && points.Count > 1 && points[0] == points[^1])
        {
            points.RemoveAt(points.Count - 1);
        }

        // A line shorter than this is a touch at a single corner
        if (points.Count >= (closed ? 3 : 2))
        {
            lines.Add(new Polyline(points, closed));
        }
    }

    private int Across(int i, int j) => 2 * (j * _field.Columns + i);

    private int Down(int i, int j) => 2 * (j * _field.Columns + i) + 1;

    private ChartPoint Crossing(int edge)
    {
        var node = edge / 2;
        var (i, j) = (node % _field.Columns, node / _field.Columns);
        var (i2, j2) = edge % 2 == 0 ? (i + 1, j) : (i, j + 1);
        var (from, to) = (_field.Values[i, j], _field.Values[i2, j2]);
        var t = Math.Clamp((_level - from) / (to - from), 0, 1);
        return new ChartPoint(
            _field.Xs[i] + t * (_field.Xs[i2] - _field.Xs[i]), _field.Ys[j] + t * (_field.Ys[j2] - _field.Ys[j]));
    }
}
