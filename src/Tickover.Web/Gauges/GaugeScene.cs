using System.Globalization;
using Tickover.Physics.Sending;
using Tickover.Workshop.Gauges;

namespace Tickover.Web.Gauges;

/// <summary>Where things stand in the picture of two tanks seen from behind, in its own units (800 by 400).</summary>
/// <remarks>The browser moves what this draws; both take their measures from here; it lies beside the page because it shows physics as it is.</remarks>
public sealed class GaugeScene
{
    /// <summary>Frames of the film at most: longer roads are shown in longer steps.</summary>
    public const int MostFrames = 1500;

    /// <summary>Width and height of the strip chart.</summary>
    public const int StripWidth = 772, StripHeight = 140;

    private const double Bottom = 330, Tall = 205, Broad = 220, LeftMiddle = 190, RightMiddle = 610;
    private const double DialSpan = 124;
    private const double BendFrom = 1;               // m/s²

    private readonly GaugeFilm _film;
    private readonly double _scale;
    private readonly double _most;

    /// <summary>Makes the scene.</summary>
    /// <param name="film">The drive.</param>
    public GaugeScene(GaugeFilm film)
    {
        ArgumentNullException.ThrowIfNull(film);
        _film = film;
        var (l, r) = (film.Pair.Left, film.Pair.Right);
        _scale = Math.Min(Broad / Math.Max(l.WidthMetres, r.WidthMetres), Tall / Math.Max(l.Table.HeightMetres, r.Table.HeightMetres));
        Capacity = 1000 * (l.Table.CapacityCubicMetres + r.Table.CapacityCubicMetres);
        _most = Math.Min(Capacity, 1.15 * Math.Max(film.Truth.Max(), film.Needle.Max()));
        Stride = Math.Max(2, film.Truth.Count / MostFrames + 1);
    }

    /// <summary>What both tanks hold, L.</summary>
    public double Capacity { get; }

    /// <summary>Moments between frames.</summary>
    public int Stride { get; }

    /// <summary>Frames.</summary>
    public int Frames => (_film.Truth.Count - 1) / Stride + 1;

    /// <summary>The tank's frame: left edge, top, width, height.</summary>
    /// <param name="side">Which.</param>
    /// <returns>Picture units.</returns>
    public (double X, double Y, double Width, double Height) Box(TankSide side)
    {
        var tank = Tank(side);
        var (width, height) = (_scale * tank.WidthMetres, _scale * tank.Table.HeightMetres);
        return ((side == TankSide.Left ? LeftMiddle : RightMiddle) - width / 2, Bottom - height, width, height);
    }

    /// <summary>Fuel in a tank at a moment, as the corners of a polygon.</summary>
    /// <param name="side">Which.</param>
    /// <param name="moment">Which moment.</param>
    /// <returns>Text of the points.</returns>
    public string Fuel(TankSide side, int moment)
    {
        var (x, y, width, height) = Box(side);
        var (level, slope) = side == TankSide.Left
            ? (_film.Moments.LeftLevels[moment], _film.Moments.LeftSlopes[moment])
            : (_film.Moments.RightLevels[moment], _film.Moments.RightSlopes[moment]);
        var half = 0.5 * slope * width;
        var middle = y + height - _scale * level;
        return string.Create(CultureInfo.InvariantCulture, $"{x:0.#},{middle - half:0.#} {x + width:0.#},{middle + half:0.#} {x + width:0.#},{y + height:0.#} {x:0.#},{y + height:0.#}");
    }

    /// <summary>Where the float is and where its arm turns.</summary>
    /// <param name="moment">Which moment.</param>
    /// <returns>Float and pivot.</returns>
    public (double X, double Y, double PivotX, double PivotY) Float(int moment)
    {
        var sender = _film.Pair.Fitting!.First;
        var (x, y, width, height) = Box(sender.Side);
        var at = x + width / 2 - _scale * sender.Place.LeftMetres;
        return (at, y + height - _scale * _film.Moments.SenderLevels[moment], at + (at > x + width / 2 ? -1 : 1) * 34, y + height - _scale * sender.Arm.PivotMetres);
    }

    /// <summary>Turn of a needle, degrees from straight up.</summary>
    /// <param name="part">0 at E, 1 at F.</param>
    /// <returns>Degrees.</returns>
    public static double Turn(double part) => DialSpan * (part - 0.5);

    /// <summary>A line of the strip chart.</summary>
    /// <param name="litres">Its values.</param>
    /// <returns>Text of the points.</returns>
    public string Line(IReadOnlyList<double> litres) => string.Join(' ', Enumerable.Range(0, Frames).Select(f => Point(f, litres[f * Stride])));

    /// <summary>The estimate's band on the strip chart, all the way round.</summary>
    public string Band => string.Join(' ', Enumerable.Range(0, Frames).Select(f => Point(f, _film.Estimate[f * Stride] + _film.HalfBand[f * Stride])).Concat(
        Enumerable.Range(0, Frames).Reverse().Select(f => Point(f, _film.Estimate[f * Stride] - _film.HalfBand[f * Stride]))));

    /// <summary>Place of a moment along the strip.</summary>
    /// <param name="frame">Which frame.</param>
    /// <returns>Picture units.</returns>
    public double Along(int frame) => StripWidth * (double)frame / Math.Max(1, Frames - 1);

    /// <summary>Height of a figure on the strip.</summary>
    /// <param name="litres">L.</param>
    /// <returns>Picture units.</returns>
    public double Up(double litres) => StripHeight * (1 - Math.Clamp(litres / _most, 0, 1));

    /// <summary>Bends long enough to see: start, end and whether to the left.</summary>
    public IReadOnlyList<(int From, int To, bool Left)> Bends
    {
        get
        {
            var bends = new List<(int, int, bool)>();
            var left = _film.Moments.Left;
            for (var f = 0; f < Frames; f++)
            {
                var sign = Math.Abs(left[f * Stride]) < BendFrom ? 0 : Math.Sign(left[f * Stride]);
                var from = f;
                while (sign != 0 && f + 1 < Frames && Math.Abs(left[(f + 1) * Stride]) >= BendFrom && Math.Sign(left[(f + 1) * Stride]) == sign)
                {
                    f++;
                }

                if (sign != 0)
                {
                    bends.Add((from, f, sign > 0));
                }
            }

            return bends;
        }
    }

    private LinkedTank Tank(TankSide side) => side == TankSide.Left ? _film.Pair.Left : _film.Pair.Right;

    private string Point(int frame, double litres) => string.Create(CultureInfo.InvariantCulture, $"{Along(frame):0.#},{Up(litres):0.#}");
}
