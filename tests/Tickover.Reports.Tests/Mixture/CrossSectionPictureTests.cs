using System.Xml.Linq;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Tests.Mixture;

public sealed class CrossSectionPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Theory]
    [InlineData(CrossSectionAxis.Speed, PictureSize.Full)]
    [InlineData(CrossSectionAxis.Opening, PictureSize.Full)]
    [InlineData(CrossSectionAxis.Speed, PictureSize.Phone)]
    [InlineData(CrossSectionAxis.Opening, PictureSize.Phone)]
    public void Fitted_and_trial_differ_by_dash_and_name(CrossSectionAxis axis, PictureSize size)
    {
        var view = View(axis) with { Trial = Maps.Typical(richer: 0.1), Size = size };

        var svg = XDocument.Parse(CrossSectionPicture.ToSvg(view)).Root!;

        var words = svg.Descendants(Svg + "text").Select(t => t.Value).ToArray();
        Assert.Contains("fitted", words, StringComparer.Ordinal);
        Assert.Contains("trial", words, StringComparer.Ordinal);
        Assert.Contains("target", words, StringComparer.Ordinal);
        Assert.Contains(svg.Descendants(Svg + "path"), p => p.Has("stroke-dasharray", "10 5"));
        Assert.DoesNotContain("NaN", svg.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_cut_reads_what_the_map_holds()
    {
        // 0.9 + 0.2 at the hollow's middle; target there 0.88 to 0.95
        var samples = Cut.Through(View(CrossSectionAxis.Opening));

        var there = samples.MinBy(s => Math.Abs(s.Along - 11))!;
        Assert.Equal(1.10, there.Fitted!.Value, 0.01);
        Assert.Equal(0.95, there.Target.Leanest, 0.01);
        Assert.Equal(FuelCircuit.Progression, there.Feeding);
        Assert.Equal("Driven by the car", samples[0].Why!.ShortWords);
        Assert.Null(samples[0].Fitted);
    }

    [Fact]
    public void The_sentence_tells_range_and_the_longest_stretch_beyond()
    {
        var sentence = CrossSectionPicture.Sentence(View(CrossSectionAxis.Speed));

        Assert.StartsWith("λ over engine speed at 11° of throttle: 0.9", sentence, StringComparison.Ordinal);
        Assert.Contains("leaner than the target from ", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cut_without_an_answer_is_drawn_and_says_so()
    {
        var view = View(CrossSectionAxis.Speed) with { Fitted = Maps.Of((_, _) => Maps.Point(0, PointValidity.NoFuel)) };

        Assert.EndsWith(": no answer.", CrossSectionPicture.Sentence(view), StringComparison.Ordinal);
        Assert.Contains("No fuel", CrossSectionPicture.ToSvg(view), StringComparison.Ordinal);
        Assert.All(CrossSectionPicture.TableFor(view).Rows, r => Assert.Equal(Shown.Nothing, r[1]));
    }

    private static CrossSectionView View(CrossSectionAxis axis) =>
        new() { Fitted = Maps.Typical(), BarrelNumber = 1, Spot = new MapSpot(2750, 11), Axis = axis };
}
