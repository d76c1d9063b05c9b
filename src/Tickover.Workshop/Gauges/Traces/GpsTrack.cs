using System.Globalization;
using System.Xml;
using System.Xml.Linq;

namespace Tickover.Workshop.Gauges.Traces;

/// <summary>A GPS track as accelerations of the car: speed and bends.</summary>
/// <remarks>GPX 1.1 (an open standard): trkpt with lat, lon and a time.</remarks>
internal sealed record GpsTrack(double[] Times, double[] Ahead, double[] Left)
{
    private const double EarthRadius = 6371000;
    private const double Smoothing = 1.5;            // s to either side
    private const double Crawl = 1.5;                // m/s; slower than this a heading means nothing

    public static GpsTrack? Read(string text)
    {
        XDocument document;
        try
        {
            using var reader = XmlReader.Create(new StringReader(text), new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
            document = XDocument.Load(reader);
        }
        catch (XmlException)
        {
            return null;
        }

        var points = document.Descendants().Where(e => e.Name.LocalName is "trkpt").Select(Point).ToArray();
        return points.Length < 10 || Array.Exists(points, p => p is null) ? null : Of([.. points.OfType<(double, double, double)>()]);
    }

    private static (double Time, double Latitude, double Longitude)? Point(XElement e)
    {
        var time = e.Elements().FirstOrDefault(c => c.Name.LocalName is "time")?.Value;
        return double.TryParse(e.Attribute("lat")?.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var latitude)
            && double.TryParse(e.Attribute("lon")?.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var longitude)
            && DateTimeOffset.TryParse(time, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var at)
            ? (at.ToUnixTimeMilliseconds() / 1000.0, double.DegreesToRadians(latitude), double.DegreesToRadians(longitude))
            : null;
    }

    private static GpsTrack Of((double Time, double Latitude, double Longitude)[] points)
    {
        var origin = points[0];
        var times = Array.ConvertAll(points, p => p.Time - origin.Time);
        var east = Smooth(times, Array.ConvertAll(points, p => EarthRadius * Math.Cos(origin.Latitude) * (p.Longitude - origin.Longitude)));
        var north = Smooth(times, Array.ConvertAll(points, p => EarthRadius * (p.Latitude - origin.Latitude)));
        var (ve, vn) = (Slopes(times, east), Slopes(times, north));
        var (ae, an) = (Slopes(times, ve), Slopes(times, vn));
        var (ahead, left) = (new double[times.Length], new double[times.Length]);
        for (var i = 0; i < times.Length; i++)
        {
            var speed = Math.Sqrt(ve[i] * ve[i] + vn[i] * vn[i]);
            var sure = speed < Crawl ? 0 : 1 / speed;
            ahead[i] = (ve[i] * ae[i] + vn[i] * an[i]) * sure;
            left[i] = (ve[i] * an[i] - vn[i] * ae[i]) * sure;
        }

        return new GpsTrack(times, ahead, left);
    }

    // The window moves along, so that a long track takes no longer for each point than a short one.
    private static double[] Smooth(double[] times, double[] values)
    {
        var smooth = new double[times.Length];
        double sum = 0;
        for (int i = 0, from = 0, to = 0; i < times.Length; i++)
        {
            while (to < times.Length && times[to] <= times[i] + Smoothing)
            {
                sum += values[to++];
            }

            while (times[from] < times[i] - Smoothing)
            {
                sum -= values[from++];
            }

            smooth[i] = sum / (to - from);
        }

        return smooth;
    }

    private static double[] Slopes(double[] times, double[] values) => [.. times.Select((_, i) =>
    {
        var (a, b) = (Math.Max(0, i - 1), Math.Min(times.Length - 1, i + 1));
        return times[b] > times[a] ? (values[b] - values[a]) / (times[b] - times[a]) : 0;
    })];
}
