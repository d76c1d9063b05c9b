using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Logs;

namespace Tickover.Reports.Roads;

/// <summary>Where the parts of the picture of a road log stand: lanes of the regimes on top, the channels below, one time axis.</summary>
internal sealed class TraceFrame
{
    /// <summary>Height of a lane, drawing units.</summary>
    internal const double LaneHeight = 20;

    private const double FullWidth = 772;
    private const double PhoneWidth = 366;
    private const double Left = 94;                      // "progression" at 14 px, and a gap
    private const double Right = 10;
    private const double LanesTop = 26;
    private const double Between = 30;                   // room for the heading of the next channel
    private const double AxisHeight = 44;

    private static readonly Regime[] Order = [Regime.FullLoad, Regime.Cruise, Regime.Changeover, Regime.Progression, Regime.Idle, Regime.Overrun];

    internal TraceFrame(TraceView view)
    {
        IsPhone = view.Size is PictureSize.Phone;
        Width = IsPhone ? PhoneWidth : FullWidth;
        Lanes = [.. Order.Where(r => view.Trace.Stretches.Any(s => s.Regime == r))];
        HasOpenings = view.Trace.TipInSeconds.Count > 0;
        var top = LanesTop + (Lanes.Count + (HasOpenings ? 1 : 0)) * LaneHeight;
        var (small, tall) = IsPhone ? (92, 170) : (104, 190);
        Speed = new Box(Left, top + Between, Width - Left - Right, small);
        Load = new Box(Left, Speed.Bottom + Between, Speed.Width, small);
        Lambda = new Box(Left, Load.Bottom + Between, Speed.Width, tall);
        Height = Lambda.Bottom + AxisHeight;
        var end = view.Trace.Seconds.Count > 0 ? view.Trace.Seconds[^1] : 0;
        Time = new Scale(ScaleKind.Linear, (0, Math.Max(end, 1)), (Speed.Left, Speed.Right));
    }

    internal bool IsPhone { get; }

    internal double Width { get; }

    internal double Height { get; }

    /// <summary>Regimes that occur, the heaviest load on top.</summary>
    internal IReadOnlyList<Regime> Lanes { get; }

    internal bool HasOpenings { get; }

    internal Box Speed { get; }

    internal Box Load { get; }

    internal Box Lambda { get; }

    internal Scale Time { get; }

    /// <summary>Top of the lanes.</summary>
    internal static double Top => LanesTop;

    /// <summary>From the first lane down to the last channel, the width of the time.</summary>
    internal Box All => new(Speed.Left, LanesTop, Speed.Width, Lambda.Bottom - LanesTop);

    /// <summary>Box of a lane.</summary>
    internal Box Lane(int row) => new(Speed.Left, LanesTop + row * LaneHeight, Speed.Width, LaneHeight);

    /// <summary>Places of a span in time, at least one unit wide.</summary>
    internal (double From, double To) Span(double start, double end)
    {
        var (from, to) = (Time.ToPlace(start), Math.Min(Speed.Right, Time.ToPlace(end)));
        return (from, Math.Max(to, from + 1));
    }
}
