using System.Globalization;
using System.Xml.Linq;
using Tickover.Reports.Fits;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Calibration;
using Tickover.Workshop.Logs;

namespace Tickover.Reports.Tests.Fits;

/// <summary>The picture of readings beside a fit.</summary>
public sealed class ResidualPictureTests
{
    private const double Deviation = 0.02;
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void A_regime_that_reads_lean_is_named_with_its_bias_and_one_that_does_not_is_not()
    {
        var view = View([.. Regime(25, 2500, 0.03), .. Regime(8, 1500, 0)]);

        Assert.Equal("20 readings beside the fit, none outside the 90 % band; cruise read 0.03 lean of the fit.", ResidualPicture.Sentence(view));
        var words = Words(ResidualPicture.ToSvg(view));
        Assert.Contains("0.03 lean", words, StringComparer.Ordinal);
        Assert.DoesNotContain(words, w => w.EndsWith(" rich", StringComparison.Ordinal));
    }

    [Fact]
    public void The_band_joins_what_the_model_leaves_over_with_the_error_of_the_reading()
    {
        // 1.645 x sqrt(0.02^2 + 0.01^2) = 0.0368 at λ 1: 0.036 lies within, 0.038 outside.
        var view = View([Point(25, 2500, 0.036), Point(25, 2600, 0.038)]);

        Assert.Equal("1", ResidualPicture.TableFor(view).Rows.Single()[4]);
        Assert.StartsWith("2 readings beside the fit, 1 outside", ResidualPicture.Sentence(view), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_banks_are_told_apart_in_table_and_legend()
    {
        var view = View([.. Regime(25, 2500, 0.03, bank: 1), .. Regime(25, 2500, -0.03, bank: 2)]);

        Assert.Equal(["cruise, bank 1", "cruise, bank 2"], ResidualPicture.TableFor(view).Rows.Select(r => r[0]), StringComparer.Ordinal);
        Assert.Equal(["+0.03", "−0.03"], ResidualPicture.TableFor(view).Rows.Select(r => r[2]), StringComparer.Ordinal);
        Assert.Contains("bank 2", Words(ResidualPicture.ToSvg(view)), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData(PictureSize.Full)]
    [InlineData(PictureSize.Phone)]
    public void Every_word_stands_inside_the_drawing_and_is_large_enough(PictureSize size)
    {
        var view = View([.. Regime(2, 900, 0.05), .. Regime(8, 1500, -0.04), .. Regime(25, 2500, 0.03), .. Regime(75, 5500, 0.2)]) with { Size = size };
        var svg = XElement.Parse(ResidualPicture.ToSvg(view));
        var box = ((string)svg.Attribute("viewBox")!).Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray();
        var (width, height) = (box[2], box[3]);

        Assert.All(svg.Descendants(Svg + "text"), text =>
        {
            var (x, y, letter) = (Number(text, "x"), Number(text, "y"), Number(text, "font-size"));
            var half = text.Value.Length * letter * 0.54;
            var (left, right) = (string?)text.Attribute("text-anchor") switch { "end" => (x - half, x), "middle" => (x - half / 2, x + half / 2), _ => (x, x + half) };
            Assert.True(letter >= 14, $"{text.Value} is {letter} px");
            Assert.True(left >= 0 && right <= width && y > 0 && y <= height, $"'{text.Value}' reaches from {left} to {right} of {width}, at {y} of {height}");
        });
    }

    [Fact]
    public void As_a_file_of_its_own_it_needs_no_style_sheet()
    {
        var svg = StandaloneSvg.Of(ResidualPicture.ToSvg(View([.. Regime(25, 2500, 0.03)])));

        Assert.DoesNotContain("var(", svg, StringComparison.Ordinal);
        Assert.Equal("#ffffff", (string?)XElement.Parse(svg).Elements(Svg + "rect").First().Attribute("fill"));
    }

    [Fact]
    public void No_readings_make_a_picture_that_says_so()
    {
        Assert.Equal("No readings beside the fit.", ResidualPicture.Sentence(View([])));
        Assert.NotEmpty(ResidualPicture.ToSvg(View([])));
    }

    private static double Number(XElement element, string name) => double.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);

    private static List<string> Words(string svg) => [.. XElement.Parse(svg).Descendants(Svg + "text").Select(t => t.Value)];

    private static ResidualView View(IReadOnlyList<FittedPoint> points) => new() { Points = points, FieldDeviation = Deviation };

    private static IEnumerable<FittedPoint> Regime(double degrees, double rpm, double off, int? bank = null) =>
        Enumerable.Range(0, 10).Select(k => Point(degrees, rpm + 20 * k, off, bank));

    private static FittedPoint Point(double degrees, double rpm, double off, int? bank = null) => new()
    {
        Run = 0,
        Point = new MixturePoint { Bank = bank, Regime = Workshop.Logs.Regime.Cruise, SpeedRpm = rpm, ThrottleDegrees = degrees, Lambda = 1 + off, LambdaSigma = 0.01, Count = 40 },
        ThrottleDegrees = degrees,
        ExpectedLambda = 1,
        FittedLambda = 1,
        Weight = 1,
        LeftOutError = off,
        LeftOutDeviation = 0.02,
    };
}
