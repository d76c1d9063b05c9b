using Tickover.Instruments.Logs;
using static Tickover.Instruments.Tests.Logs.WrittenLog;

namespace Tickover.Instruments.Tests.Logs;

/// <summary>Clocks as loggers keep them.</summary>
public sealed class TimeTests
{
    public static TheoryData<string, string> Clocks => new()
    {
        { "seconds", "time" }, { "milliseconds", "time" }, { "iso", "timestamp" }, { "day", "Time" }, { "british", "Date Time" }, { "epoch", "t" }, { "minutes", "time (mm:ss)" },
    };

    [Theory]
    [MemberData(nameof(Clocks))]
    public void Time_is_read_as_it_is_written(string kind, string heading)
    {
        var start = new DateTime(2026, 5, 3, 13, 59, 30, DateTimeKind.Utc);
        string Written(double t) => kind switch
        {
            "milliseconds" => (1000 * t + 12_345).ToString("0", C),
            "iso" => start.AddSeconds(t).ToString("yyyy-MM-ddTHH:mm:ss.fffZ", C),
            "day" => start.AddSeconds(t).ToString("HH:mm:ss.f", C),
            "british" => start.AddSeconds(t).ToString("dd/MM/yyyy HH:mm:ss.f", C),
            "epoch" => ((start.AddSeconds(t) - DateTime.UnixEpoch).TotalSeconds).ToString("0.00", C),
            "minutes" => FormattableString.Invariant($"{(int)(t / 60)}:{t % 60:00.0}"),
            _ => t.ToString("0.0", C),
        };

        var log = Read(Text($"{heading},rpm,tps,lambda", m => string.Create(C, $"{Written(m.T)},{m.Rpm:0},{m.Tps:0.0},{m.Lambda:0.000}"))).Good();

        Assert.Equal(1200, log.Count);
        Assert.Equal(119.9, log.Seconds[^1], 1e-3);
        Assert.All(log.Seconds.Zip(log.Seconds.Skip(1)), p => Assert.True(p.Second > p.First));
    }

    [Theory]
    [InlineData("wraps at 60", "rolled over", 119.9)]
    [InlineData("restarts", "restarted", 149.8)]
    [InlineData("midnight", "rolled over", 119.9)]
    [InlineData("zone", "local time and UTC", 119.9)]
    [InlineData("whole seconds", "repeated", 119.9)]
    public void A_clock_that_misbehaves_is_made_to_run_forward(string how, string said, double last)
    {
        var start = new DateTime(2026, 5, 3, 23, 59, 0, DateTimeKind.Utc);
        string Written(double t) => how switch
        {
            "wraps at 60" => (t % 60).ToString("0.0", C),
            "restarts" => (t < 70 ? t : t - 70).ToString("0.0", C),
            "midnight" => start.AddSeconds(t).ToString("HH:mm:ss.f", C),
            "zone" => start.AddSeconds(t + (t >= 50 ? 3600 : 0)).ToString("yyyy-MM-dd HH:mm:ss.f", C),
            _ => Math.Floor(t).ToString("0", C),
        };

        var reading = Read(Text("time,rpm,tps,lambda", m => string.Create(C, $"{Written(m.T)},{m.Rpm:0},{m.Tps:0.0},{m.Lambda:0.000}")));

        var log = reading.Good();
        Assert.True(reading.RepairedFor(said) > 0, string.Join("; ", reading.Repairs));
        Assert.Equal(last, log.Seconds[^1], 0.11);
        Assert.All(log.Seconds.Zip(log.Seconds.Skip(1)), p => Assert.True(p.Second > p.First));
    }

    [Fact]
    public void A_block_written_twice_counts_once()
    {
        var lines = Plain().Split('\n').ToList();
        lines.InsertRange(600, lines.GetRange(560, 40));

        var reading = Read(string.Join('\n', lines));

        Assert.Equal(1200, reading.Good().Count);
        Assert.Equal(40, reading.DroppedFor("already seen"));
        Assert.Equal(1200, reading.RowsKept);
    }

    [Fact]
    public void Without_a_clock_the_rate_will_do()
    {
        var text = Text("rpm,tps,lambda", m => string.Create(C, $"{m.Rpm:0},{m.Tps:0.0},{m.Lambda:0.000}"));

        Assert.Contains("how many rows a second", Read(text).Refusal!.Missing);
        Assert.Equal(119.9, Read(text, new LogReadingSettings { RowsPerSecond = 10 }).Good().Seconds[^1], 1e-6);
    }
}
