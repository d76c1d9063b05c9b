using System.Globalization;
using System.Xml.Linq;
using Tickover.Reports.Mixture;
using Tickover.Reports.Roads;
using Tickover.Workshop.Logs;

namespace Tickover.Reports.Tests.Roads;

/// <summary>The picture of a road log: regimes named and shaded, openings marked, what was left out hatched, both banks told apart.</summary>
public sealed class TracePictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<PictureSize> Sizes => [PictureSize.Full, PictureSize.Phone];

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Names_every_regime_and_bank_and_hatches_what_was_left_out(PictureSize size)
    {
        var svg = XDocument.Parse(TracePicture.ToSvg(View(1000) with { Size = size })).Root!;
        var words = svg.Descendants(Svg + "text").Select(t => t.Value).ToArray();

        Assert.All(new[] { "idle", "cruise", "full load", "tip-in", "bank 1", "bank 2" }, w => Assert.Contains(w, words, StringComparer.Ordinal));
        Assert.DoesNotContain("changeover", words, StringComparer.Ordinal);
        Assert.Contains(svg.Descendants(Svg + "rect"), r => r.Attribute("fill")!.Value.EndsWith("-NoAnswer)", StringComparison.Ordinal));
        Assert.Equal("Road log hill.csv, 16:39 long: steady idle 100 s, cruise 100 s, full load 10 s; 1 fast openings; left out: engine cold 50 s.", svg.Attribute("aria-label")!.Value);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void No_word_is_smaller_than_a_screen_may_show_or_stands_outside(PictureSize size)
    {
        var svg = XDocument.Parse(TracePicture.ToSvg(View(1000) with { Size = size })).Root!;
        var width = Number(svg.Attribute("viewBox")!.Value.Split(' ')[2]);

        Assert.All(svg.Descendants(Svg + "text"), t =>
        {
            // 0.5 em a letter, a little less than the face's mean.
            var (x, length) = (Number(t.Attribute("x")!.Value), 0.5 * Number(t.Attribute("font-size")!.Value) * t.Value.Length);
            var left = t.Attribute("text-anchor")?.Value switch { "middle" => x - length / 2, "end" => x - length, _ => x };
            Assert.True(Number(t.Attribute("font-size")!.Value) >= 14, t.Value);
            Assert.True(left >= -1 && left + length <= width + 1, $"{t.Value}: {left:0} to {left + length:0} of {width:0}");
        });
    }

    [Fact]
    public void A_long_trace_is_thinned_to_the_picture_and_a_single_spike_stays()
    {
        var plain = View(40_000);
        var speed = plain.Trace.SpeedRpm.ToArray();
        speed[23_457] = 6000;
        var spiked = plain with { Trace = plain.Trace with { SpeedRpm = speed } };

        Assert.InRange(TracePicture.ToSvg(spiked).Length, 1_000, 90_000);
        Assert.DoesNotContain(">6,000<", TracePicture.ToSvg(plain), StringComparison.Ordinal);
        Assert.Contains(">6,000<", TracePicture.ToSvg(spiked), StringComparison.Ordinal);
    }

    [Fact]
    public void The_table_has_a_row_for_every_stretch_opening_and_span_left_out()
    {
        var table = TraceTable.Of(View(1000));

        Assert.Equal(["At", "For", "What", "rpm", "Throttle", "λ, bank 1", "λ, bank 2"], table.Columns, StringComparer.Ordinal);
        Assert.Equal(["0:00", "1:40", "3:20"], table.Rows.Select(r => r[0]), StringComparer.Ordinal);
        Assert.Equal(["left out: engine cold", "cruise", "throttle opened fast"], table.Rows.Select(r => r[2]), StringComparer.Ordinal);
        Assert.Equal(["0.95", "0.97"], table.Rows[1].Skip(5), StringComparer.Ordinal);
    }

    [Fact]
    public void A_file_of_its_own_brings_its_colours_and_size()
    {
        var file = TracePicture.ToFile(View(1000));
        var svg = XDocument.Parse(file).Root!;

        Assert.NotNull(svg.Attribute("width"));
        var used = file.Split("var(--").Skip(1).Select(p => p[..p.IndexOf(')', StringComparison.Ordinal)]).Distinct(StringComparer.Ordinal);
        Assert.All(used, name => Assert.Contains($"--{name}:", file, StringComparison.Ordinal));
    }

    [Fact]
    public void A_log_without_throttle_or_anything_steady_is_still_a_picture()
    {
        var bare = new TraceView { Name = "bare", IdPrefix = "t", Trace = new LogTrace { Seconds = [0, 1], SpeedRpm = [900, null], Lambdas = [new LogTraceLambda(null, [null, null])] } };

        var svg = XDocument.Parse(TracePicture.ToSvg(bare)).Root!;

        Assert.Contains("nothing steady", svg.Attribute("aria-label")!.Value, StringComparison.Ordinal);
        Assert.Empty(TraceTable.Of(bare).Rows);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static TraceView View(int samples)
    {
        var seconds = Enumerable.Range(0, samples).Select(i => (double)i).ToArray();
        double?[] Channel(Func<double, double> of) => [.. seconds.Select(s => (double?)of(s))];
        return new TraceView
        {
            Name = "hill.csv",
            IdPrefix = "t",
            Trace = new LogTrace
            {
                Seconds = seconds,
                SpeedRpm = Channel(s => 2000 + 900 * Math.Sin(s / 40)),
                ThrottleDegrees = Channel(s => 20 + 15 * Math.Sin(s / 25)),
                Lambdas = [new LogTraceLambda(1, Channel(s => 0.95 + 0.03 * Math.Sin(s))), new LogTraceLambda(2, Channel(s => 0.97 + 0.03 * Math.Cos(s)))],
                Stretches = [new LogStretch(0, 100, Regime.Idle), new LogStretch(100, 200, Regime.Cruise), new LogStretch(300, 310, Regime.FullLoad)],
                TipInSeconds = [200],
                LeftOut = [new LogSpan(0, 50, "engine cold")],
            },
            Points = [Point(1, 0.95), Point(2, 0.97)],
        };
    }

    private static MixturePoint Point(int bank, double lambda) =>
        new() { Bank = bank, Regime = Regime.Cruise, SpeedRpm = 2500, ThrottleDegrees = 25, Lambda = lambda, LambdaSigma = 0.01, Count = 100, StartSeconds = 100, Seconds = 100 };
}
