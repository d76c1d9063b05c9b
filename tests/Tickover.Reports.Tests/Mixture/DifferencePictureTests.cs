using System.Xml.Linq;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Tests.Mixture;

public sealed class DifferencePictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void A_richer_trial_is_told_labelled_and_named_where_nothing_changes()
    {
        var view = new DifferenceView { Fitted = Maps.Typical(), Trial = Maps.Typical(richer: 0.10), BarrelNumber = 1, Tapped = new MapSpot(2750, 11) };

        var svg = XDocument.Parse(DifferencePicture.ToSvg(view)).Root!;
        var words = svg.Descendants(Svg + "text").Select(t => t.Value).ToArray();

        Assert.StartsWith("Trial less fitted. Richer by up to 0.10, at ", svg.Attribute("aria-label")!.Value, StringComparison.Ordinal);
        Assert.Contains("no change", words, StringComparer.Ordinal);
        Assert.Contains(words, w => w.StartsWith('\u2212'));
        Assert.Contains(svg.Descendants(Svg + "path"), p => p.Has("stroke-dasharray", "2 4"));
    }

    [Fact]
    public void The_same_map_twice_is_no_change_anywhere()
    {
        var view = new DifferenceView { Fitted = Maps.Typical(), Trial = Maps.Typical(), BarrelNumber = 1 };

        Assert.Equal("Trial less fitted. No change anywhere.", DifferencePicture.Sentence(view));
        Assert.Contains(">no change<", DifferencePicture.ToSvg(view), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_trial_no_longer_runs_it_says_so_and_the_table_too()
    {
        var dead = Maps.Of((_, _) => Maps.Point(1.8, PointValidity.TooLeanToRun));
        var view = new DifferenceView { Fitted = Maps.Typical(), Trial = dead, BarrelNumber = 1 };

        Assert.Equal("Trial less fitted. No place where both give an answer.", DifferencePicture.Sentence(view));
        Assert.Contains("Too lean to run", DifferencePicture.ToSvg(view), StringComparison.Ordinal);
        Assert.All(DifferencePicture.TableFor(view).Rows, r => Assert.All(r.Skip(1), c => Assert.Equal("Too lean to run", c)));
    }

    [Fact]
    public void Maps_over_different_grids_are_refused() => Assert.Throws<ArgumentException>(() => DifferencePicture.ToSvg(
        new DifferenceView { Fitted = Maps.Typical(), Trial = Maps.Of((_, _) => Maps.Point(1), 5, 5), BarrelNumber = 1 }));
}
