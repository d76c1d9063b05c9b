using System.Globalization;
using System.Text;
using System.Text.Json;
using Tickover.Physics.Sending;
using Tickover.Workshop.Gauges;

namespace Tickover.Web.Gauges;

/// <summary>The course as figures for the moving picture and as lines for the strip.</summary>
/// <param name="analysis">What was worked out.</param>
internal sealed class GaugeFilm(GaugeAnalysis analysis)
{
    internal const double StripWidth = 772;
    internal const double StripHeight = 140;
    private const double Litre = 1e-3;

    private IReadOnlyList<SendingMoment> Course => analysis.Course;

    private double Duration => Math.Max(1, Course[^1].Seconds);

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

    internal string TruthLine() => Line(Truth);

    internal string NeedleLine() => Line(k => analysis.NeedleLitres[k]);

    internal string EstimateLine() => Line(k => analysis.Estimates[k].CubicMetres / Litre);

    internal string Band()
    {
        var path = new StringBuilder();
        for (var k = 0; k < Course.Count; k++)
        {
            path.Append(k == 0 ? 'M' : 'L').Append(At(k, analysis.Estimates[k].HighCubicMetres / Litre));
        }

        for (var k = Course.Count - 1; k >= 0; k--)
        {
            path.Append('L').Append(At(k, analysis.Estimates[k].LowCubicMetres / Litre));
        }

        return path.Append('Z').ToString();
    }

    /// <summary>Places and words of the marks of time under the strip.</summary>
    internal IEnumerable<(string X, string Anchor, string Text)> Times() =>
        Enumerable.Range(0, 5).Select(i => (Number(StripWidth * i / 4), i switch { 0 => "start", 4 => "end", _ => "middle" }, string.Create(CultureInfo.InvariantCulture, $"{Duration * i / 4:0} s")));

    /// <summary>Height of a quarter, half and three quarters of the capacity.</summary>
    internal IEnumerable<(string Y, string Text)> Marks() =>
        Enumerable.Range(1, 3).Select(i => (Number(Y(analysis.CapacityLitres * i / 4)), string.Create(CultureInfo.InvariantCulture, $"{analysis.CapacityLitres * i / 4:0} L")));

    private static object Tank(LinkedTank t) => new { left = t.LeftMetres * 1e3, width = t.WidthMetres * 1e3, height = t.Table.HeightMetres * 1e3, floor = t.FloorMetres * 1e3 };

    private static string Number(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private double Truth(int k) => Course[k].TotalCubicMetres / Litre;

    private IEnumerable<double> Each(Func<SendingMoment, double> value, int digits) => Course.Select(m => Math.Round(value(m), digits));

    private string Line(Func<int, double> litres)
    {
        var path = new StringBuilder();
        for (var k = 0; k < Course.Count; k++)
        {
            path.Append(k == 0 ? 'M' : 'L').Append(At(k, litres(k)));
        }

        return path.ToString();
    }

    private string At(int k, double litres) => Number(StripWidth * Course[k].Seconds / Duration) + " " + Number(Y(litres));

    private double Y(double litres) => StripHeight * (1 - Math.Clamp(litres / analysis.CapacityLitres, 0, 1));
}
