using System.Globalization;
using System.Xml.Linq;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Tests.Mixture;

public sealed class FeedBarTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Stretches_are_as_long_as_the_fuel_is_much()
    {
        // 0.79 and 0.19 kg/h
        var point = new BarrelPoint { ProgressionFuelKilogramsPerSecond = 0.79 / 3600, MainFuelKilogramsPerSecond = 0.19 / 3600 };

        var bars = XDocument.Parse(FeedBar.ToSvg(point)).Descendants(Svg + "rect").Where(r => r.Parent!.Parent is null).Skip(1)
            .Select(r => double.Parse(r.Attribute("width")!.Value, CultureInfo.InvariantCulture)).ToArray();

        Assert.Equal(2, bars.Length);
        Assert.Equal(0.79 / 0.19, bars[0] / bars[1], 0.01);
        Assert.Equal("Fuel by circuit: progression holes 0.79\u202Fkg/h, main 0.19\u202Fkg/h.", FeedBar.Sentence(point));
    }

    [Fact]
    public void Without_fuel_the_bar_is_empty_and_says_so()
    {
        Assert.Equal("No fuel flows here.", FeedBar.Sentence(default));
        Assert.NotNull(XDocument.Parse(FeedBar.ToSvg(default, PictureSize.Phone)).Root);
    }
}
