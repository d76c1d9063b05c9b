using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges.Reading;

/// <summary>A GPX track: places and times give speed and curvature, and they the accelerations.</summary>
internal static class GpxTrace
{
    private const int Fewest = 10;
    private const double LongestGap = 5;                   // s
    private const double EarthMetres = 6_371_000;
    private const double Step = 0.05;
    private const double FastestMetresPerSecond = 90;

    public static TraceReading Read(string text)
    {
        List<(double Time, double X, double Y, double Up)> points;
        try
        {
            using var reader = XmlReader.Create(new StringReader(text), new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
            points = Points(XDocument.Load(reader));
        }
        catch (Exception e) when (e is XmlException or FormatException)
        {
            return new TraceReading(null, $"This is not readable as GPX: {e.Message}");
        }

        if (points.Count < Fewest)
        {
            return new TraceReading(null, $"{points.Count} points with a place and a time; a drive has at least {Fewest}.");
        }

        var gap = points.Zip(points.Skip(1)).Select((p, i) => (Seconds: p.Second.Time - p.First.Time, Way: Distance(p.First, p.Second), i)).FirstOrDefault(g => g.Seconds is <= 0 or > LongestGap || g.Way > FastestMetresPerSecond * g.Seconds);
        return gap.Seconds != 0 || gap.Way != 0
            ? new TraceReading(null, string.Create(CultureInfo.InvariantCulture, $"Between points {gap.i + 1} and {gap.i + 2} lie {gap.Seconds:0.0} s and {gap.Way:0} m. What the car did there is not known: cut the track there."))
            : new TraceReading(Trace(points), "");
    }

    private static List<(double Time, double X, double Y, double Up)> Points(XDocument track)
    {
        var points = new List<(double Time, double X, double Y, double Up)>();
        var (begin, latitude0, longitude0) = (DateTimeOffset.MinValue, 0.0, 0.0);
        foreach (var p in track.Descendants().Where(e => e.Name.LocalName is "trkpt"))
        {
            string? Child(string name) => p.Elements().FirstOrDefault(e => string.Equals(e.Name.LocalName, name, StringComparison.Ordinal))?.Value;
            if (Child("time") is not { } time)
            {
                continue;
            }

            var when = DateTimeOffset.Parse(time, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);
            var (latitude, longitude) = (double.Parse(p.Attribute("lat")?.Value ?? "x", CultureInfo.InvariantCulture), double.Parse(p.Attribute("lon")?.Value ?? "x", CultureInfo.InvariantCulture));
            if (points.Count == 0)
            {
                (begin, latitude0, longitude0) = (when, latitude, longitude);
            }

            var up = double.TryParse(Child("ele"), NumberStyles.Float, CultureInfo.InvariantCulture, out var height) ? height : 0;
            points.Add((
                (when - begin).TotalSeconds,
                EarthMetres * double.DegreesToRadians(longitude - longitude0) * Math.Cos(double.DegreesToRadians(latitude0)),
                EarthMetres * double.DegreesToRadians(latitude - latitude0),
                up));
        }

        return points;
    }

    // A parabola through five points each gives speed and curvature; places from the air are too rough for less.
    private static RoadTrace Trace(List<(double Time, double X, double Y, double Up)> p)
    {
        var known = Enumerable.Range(0, p.Count).Select(i => Known(p, i)).ToArray();
        var at = 0;
        var count = (int)((p[^1].Time - p[0].Time) / Step) + 1;
        return new RoadTrace(Step, Enumerable.Range(0, count).Select(k =>
        {
            var time = p[0].Time + k * Step;
            while (at < p.Count - 2 && p[at + 1].Time <= time)
            {
                at++;
            }

            var share = Math.Clamp((time - p[at].Time) / (p[at + 1].Time - p[at].Time), 0, 1);
            var (a, b) = (known[at], known[at + 1]);
            return RoadSample.On(a.Along + share * (b.Along - a.Along), a.Left + share * (b.Left - a.Left), a.Grade + share * (b.Grade - a.Grade), 0);
        }).ToArray());
    }

    private static (double Along, double Left, double Grade) Known(List<(double Time, double X, double Y, double Up)> p, int i)
    {
        var from = Math.Clamp(i - 2, 0, p.Count - 5);
        var five = p.GetRange(from, 5);
        var (xs, ys, ups) = (Parabola(five, p[i].Time, q => q.X), Parabola(five, p[i].Time, q => q.Y), Parabola(five, p[i].Time, q => q.Up));
        var speed = Math.Sqrt(xs.Rate * xs.Rate + ys.Rate * ys.Rate);
        if (speed < 1)
        {
            return (0, 0, 0);
        }

        var along = (xs.Rate * xs.Bend + ys.Rate * ys.Bend) / speed;
        var left = (xs.Rate * ys.Bend - ys.Rate * xs.Bend) / speed;
        return (Math.Clamp(along, -10, 10), Math.Clamp(left, -10, 10), Math.Clamp(ups.Rate / speed, -0.3, 0.3));
    }

    // First and second derivative of the least-squares parabola at a time.
    private static (double Rate, double Bend) Parabola(List<(double Time, double X, double Y, double Up)> five, double at, Func<(double Time, double X, double Y, double Up), double> value)
    {
        var (s1, s2, s3, s4, v0, v1, v2) = (0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
        foreach (var q in five)
        {
            var (t, v) = (q.Time - at, value(q));
            (s1, s2, s3, s4) = (s1 + t, s2 + t * t, s3 + t * t * t, s4 + t * t * t * t);
            (v0, v1, v2) = (v0 + v, v1 + t * v, v2 + t * t * v);
        }

        // Cramer's rule on the normal equations of v = a + b t + c t².
        double n = five.Count;
        var whole = n * (s2 * s4 - s3 * s3) - s1 * (s1 * s4 - s3 * s2) + s2 * (s1 * s3 - s2 * s2);
        var rate = n * (v1 * s4 - v2 * s3) - v0 * (s1 * s4 - s3 * s2) + s2 * (s1 * v2 - v1 * s2);
        var bend = n * (s2 * v2 - s3 * v1) - s1 * (s1 * v2 - v1 * s2) + v0 * (s1 * s3 - s2 * s2);
        return (rate / whole, 2 * bend / whole);
    }

    private static double Distance((double Time, double X, double Y, double Up) a, (double Time, double X, double Y, double Up) b) =>
        Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));
}
