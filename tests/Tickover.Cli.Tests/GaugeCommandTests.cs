namespace Tickover.Cli.Tests;

public sealed class GaugeCommandTests
{
    private const string Document = "samples/tern.gauge.json";

    [Fact]
    public async Task The_story_of_the_sample_is_told_in_words()
    {
        var ran = await Ran.OfAsync("gauge", Document);

        Assert.Equal(ExitCode.Done, ran.Code);
        Assert.Contains("L short", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Restrictor", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Best estimate", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("samples/tern.linkage.json", "tickover-gauge-1")]
    [InlineData("samples/no-such.gauge.json", "There is no file")]
    [InlineData("samples/tern-trace.csv", "Not readable as JSON")]
    public async Task What_cannot_be_used_is_said_in_words(string file, string said)
    {
        var ran = await Ran.OfAsync("gauge", file);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Contains(said, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_slip_of_a_document_is_told_at_once()
    {
        var ran = await Ran.OfAsync("""{ "format": "tickover-gauge-1", "name": "x", "left": { "areas": [[0, 800], [0, 900]], "width": 280, "length": 380, "middle": 450 }, "pipe": { "bore": 12, "length": 800, "restrictor": 14 }, "start": [-1, 3] }""", ["gauge", "-"]);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        foreach (var path in new[] { "left.areas", "right", "pipe.restrictor", "sender", "gauge", "start[0]" })
        {
            Assert.Contains(path, ran.Error, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("time,ahead,left", 0.3, 0.01, "--units g")]
    [InlineData("time,ahead,left", 30, 0.01, "no car on the road")]
    [InlineData("time,ahead,up", 3, 0.01, "--ahead COLUMN --left COLUMN")]
    [InlineData("time,ahead,left", 3, 60, "--bridge-gaps")]
    [InlineData("time,ahead,left", 3, -1, "does not rise")]
    public async Task A_doubtful_trace_is_asked_about(string headings, double size, double jump, string asked)
    {
        var folder = Directory.CreateTempSubdirectory("tickover-cli-");
        try
        {
            var file = Path.Combine(folder.FullName, "trace.csv");
            var rows = Enumerable.Range(0, 200).Select(i => FormattableString.Invariant($"{i * 0.1 + (i > 100 ? jump : 0):0.00},{0.1 * size * Math.Sin(0.1 * i):0.000},{size * Math.Sin(0.05 * i):0.000}"));
            await File.WriteAllLinesAsync(file, [headings, .. rows]);

            var ran = await Ran.OfAsync("gauge", Document, "--trace", file);

            Assert.Equal(ExitCode.UnusableInput, ran.Code);
            Assert.Contains(asked, ran.Error, StringComparison.Ordinal);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task A_trace_in_g_drives_the_same_road_as_the_one_in_metres()
    {
        var folder = Directory.CreateTempSubdirectory("tickover-cli-");
        try
        {
            var file = Path.Combine(folder.FullName, "trace.csv");
            var lines = await File.ReadAllLinesAsync(Path.Combine(Architecture.Tests.Repository.Root, "samples", "tern-trace.csv"));
            var converted = lines.Skip(1).Select(l => l.Split(',')).Select(c => FormattableString.Invariant($"{c[0]},{Number(c[1]) / 9.80665:0.00000},{Number(c[2]) / 9.80665:0.00000}"));
            await File.WriteAllLinesAsync(file, ["time (s),ahead (g),left (g)", .. converted]);

            var (metres, gravities) = (await Ran.OfAsync("gauge", Document, "--trace", "samples/tern-trace.csv"), await Ran.OfAsync("gauge", Document, "--trace", file));

            Assert.Equal(ExitCode.Done, gravities.Code);
            Assert.Equal(metres.Output.Replace("tern-trace.csv", "", StringComparison.Ordinal), gravities.Output.Replace("trace.csv", "", StringComparison.Ordinal));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task A_track_round_a_circle_pulls_as_speed_and_radius_say()
    {
        // 60 m radius at 12 m/s: 2.4 m/s² to the left.
        var points = Enumerable.Range(0, 120).Select(i => (Angle: 0.2 * i, At: DateTimeOffset.UnixEpoch.AddSeconds(i)))
            .Select(p => FormattableString.Invariant($"""<trkpt lat="{50 + 60 * Math.Sin(p.Angle) / 111194.93:0.00000000}" lon="{60 * Math.Cos(p.Angle) / (111194.93 * Math.Cos(50 * Math.PI / 180)):0.00000000}"><time>{p.At:yyyy-MM-ddTHH:mm:ssZ}</time></trkpt>"""));
        var reading = Workshop.Gauges.Traces.RecordedTrace.Read("lane.gpx", $"""<gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1"><trk><trkseg>{string.Concat(points)}</trkseg></trk></gpx>""", new());

        await Task.CompletedTask;
        Assert.Null(reading.Question);
        Assert.InRange(reading.Road!.Trace.Left[2500], 2.2, 2.5);
        Assert.InRange(reading.Road.Trace.Ahead[2500], -0.1, 0.1);
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
