using System.Text.Json;
using Tickover.Physics.Sending;
using Tickover.Workshop.Gauges;

namespace Tickover.Web.Gauges;

/// <summary>The course as figures for the moving picture.</summary>
/// <param name="analysis">What was worked out.</param>
internal sealed class GaugeFilm(GaugeAnalysis analysis)
{
    private const double Litre = 1e-3;

    private IReadOnlyList<SendingMoment> Course => analysis.Course;

    /// <summary>The moment at which the needle is most wrong.</summary>
    internal int Worst => Enumerable.Range(0, Course.Count).MaxBy(k => Math.Abs(analysis.NeedleLitres[k] - Truth(k)));

    internal int Last => Course.Count - 1;

    /// <summary>Everything the picture needs, once; escaped so that it may stand in a page.</summary>
    internal string Json() => JsonSerializer.Serialize(new
    {
        seconds = Each(m => m.Seconds, 2),
        left = Each(m => m.LeftCubicMetres / Litre, 2),
        right = Each(m => m.RightCubicMetres / Litre, 2),
        leftLevel = Each(m => m.LeftLevelMetres * 1e3, 1),
        rightLevel = Each(m => m.RightLevelMetres * 1e3, 1),
        leftWave = Each(m => m.LeftWaveMetres * 1e3, 1),
        rightWave = Each(m => m.RightWaveMetres * 1e3, 1),
        slope = Each(m => m.Road.LeftMetresPerSecondSquared / m.Road.UpMetresPerSecondSquared, 4),
        flow = Each(m => m.FlowToRight / Litre * 60, 2),
        sender = Each(m => m.SenderLevelMetres * 1e3, 1),
        needle = Each(m => m.Needle, 4),
        lamp = Each(m => m.Lamp ? 1 : 0, 0),
        covered = Each(m => m.PickUpCovered ? 1 : 0, 0),
        needleLitres = analysis.NeedleLitres.Select(v => Math.Round(v, 2)),
        estimate = analysis.Estimates.Select(e => Math.Round(e.CubicMetres / Litre, 2)),
        low = analysis.Estimates.Select(e => Math.Round(e.LowCubicMetres / Litre, 2)),
        high = analysis.Estimates.Select(e => Math.Round(e.HighCubicMetres / Litre, 2)),
        capacity = Math.Round(analysis.CapacityLitres, 2),
        tanks = new[] { Tank(analysis.Story.Tanks.Left), Tank(analysis.Story.Tanks.Right) },
        senderIsLeft = analysis.Story.Tanks.Sender.Place.Side is TankSide.Left,
        senderLeft = analysis.Story.Tanks.Sender.Place.LeftMetres * 1e3,
        pivot = analysis.Story.Tanks.Sender.Arm.PivotMetres * 1e3,
        arm = analysis.Story.Tanks.Sender.Arm.LengthMetres * 1e3,
        bore = analysis.Story.Tanks.Pipe.BoreMetres * 1e3,
    });

    private static object Tank(LinkedTank t) => new { left = t.LeftMetres * 1e3, width = t.WidthMetres * 1e3, height = t.Table.HeightMetres * 1e3, floor = t.FloorMetres * 1e3 };

    private double Truth(int k) => Course[k].TotalCubicMetres / Litre;

    private IEnumerable<double> Each(Func<SendingMoment, double> value, int digits) => Course.Select(m => Math.Round(value(m), digits));
}
