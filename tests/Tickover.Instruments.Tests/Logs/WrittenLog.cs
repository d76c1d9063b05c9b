using System.Globalization;
using System.Text;
using Tickover.Instruments.Logs;

namespace Tickover.Instruments.Tests.Logs;

/// <summary>An invented drive, written as a test wants it: idle, then openings and closings, 10 rows a second.</summary>
internal static class WrittenLog
{
    public static readonly CultureInfo C = CultureInfo.InvariantCulture;

    /// <summary>One moment: seconds, rpm, throttle %, manifold kPa absolute, λ, coolant °C, road km/h.</summary>
    public readonly record struct Moment(double T, double Rpm, double Tps, double Map, double Lambda, double Coolant, double Road);

    public static Moment[] Drive(int rows = 1200, double rate = 10)
    {
        var moments = new Moment[rows];
        for (var i = 0; i < rows; i++)
        {
            var t = i / rate;
            var phase = t % 40;
            var tps = phase < 12 ? 2.4 : 2.4 + 60 * Math.Pow(Math.Sin((phase - 12) / 28 * Math.PI), 2) + 0.3 * Math.Sin(9.1 * t);
            var rpm = phase < 12 ? 870 + 12 * Math.Sin(3.3 * t) : 1500 + 40 * (tps - 2.4) + 15 * Math.Sin(5.7 * t);
            var map = phase < 12 ? 34 + 0.6 * Math.Sin(2.1 * t) : 38 + 60 * (tps - 2.4) / 60.4;
            var lambda = 0.93 + 0.05 * Math.Cos(0.37 * t) - 0.0008 * tps + 0.004 * Math.Sin(7.7 * t);
            moments[i] = new(t, rpm, tps, map, lambda, 84 + Math.Sin(0.1 * t), phase < 12 ? 0 : rpm * 0.032);
        }

        return moments;
    }

    public static string Text(string headings, Func<Moment, string> row, int rows = 1200, string end = "\n")
    {
        var text = new StringBuilder(headings).Append(end);
        foreach (var moment in Drive(rows))
        {
            text.Append(row(moment)).Append(end);
        }

        return text.ToString();
    }

    public static string Plain(int rows = 1200) => Text(
        "time_s,rpm,tps,map_kpa,lambda,ect",
        m => string.Create(C, $"{m.T:0.00},{m.Rpm:0},{m.Tps:0.0},{m.Map:0.0},{m.Lambda:0.000},{m.Coolant:0}"),
        rows);

    public static LogReading Read(string text, LogReadingSettings? settings = null) => Read(Encoding.UTF8.GetBytes(text), settings);

    public static LogReading Read(byte[] bytes, LogReadingSettings? settings = null)
    {
        using var stream = new MemoryStream(bytes);
        return LogReader.Read(stream, settings);
    }

    public static ColumnChoice Column(this LogReading reading, string heading) => Assert.Single(reading.Columns, c => string.Equals(c.Column, heading, StringComparison.Ordinal));

    public static long DroppedFor(this LogReading reading, string words) => reading.Dropped.Where(d => d.What.Contains(words, StringComparison.Ordinal)).Sum(d => d.Rows);

    public static long RepairedFor(this LogReading reading, string words) => reading.Repairs.Where(d => d.What.Contains(words, StringComparison.Ordinal)).Sum(d => d.Rows);

    public static Workshop.Logs.RoadLog Good(this LogReading reading)
    {
        Assert.True(reading.Log is not null, reading.Refusal?.ToString());
        return reading.Log;
    }
}
