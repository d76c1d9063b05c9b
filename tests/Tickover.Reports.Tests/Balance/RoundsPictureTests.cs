using System.Globalization;
using System.Xml.Linq;
using Tickover.Reports.Balance;
using Tickover.Reports.Mixture;

namespace Tickover.Reports.Tests.Balance;

public sealed class RoundsPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly RoundsView Two = new(
        [
            new RoundRow(1, "As found", [(3.0, RingStanding.Low), (3.9, RingStanding.Within), (5.2, RingStanding.High)], 4.03) { LimitPart = 0.1 },
            new RoundRow(2, "Front coupling screw: out \u00BC", [(3.6, RingStanding.CannotTell), (4.0, RingStanding.Within)], 3.8) { LimitPart = 0.1, IsVoid = true },
        ],
        "kg/h");

    [Theory]
    [InlineData(PictureSize.Full)]
    [InlineData(PictureSize.Phone)]
    public void A_row_a_round_tells_what_was_moved_before_and_its_spread(PictureSize size)
    {
        var texts = XDocument.Parse(RoundsPicture.ToSvg(Two with { Size = size })).Descendants(Svg + "text").Select(t => t.Value).ToList();

        Assert.Contains("As found", texts, StringComparer.Ordinal);
        Assert.Contains("Front coupling screw: out \u00BC", texts, StringComparer.Ordinal);
        Assert.Contains("2.2", texts, StringComparer.Ordinal);
        Assert.Contains("void", texts, StringComparer.Ordinal);
    }

    [Fact]
    public void Marks_lie_where_their_air_is_the_leftmost_the_least()
    {
        var svg = XDocument.Parse(RoundsPicture.ToSvg(Two with { Rows = [Two.Rows[1]] })).Root!;

        var places = svg.Descendants(Svg + "circle").Select(c => double.Parse(c.Attribute("cx")!.Value, CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(2, places.Count);
        Assert.True(places[0] < places[1]);
    }

    [Fact]
    public void No_round_is_no_fault() => Assert.Equal("No round yet.", RoundsPicture.Sentence(new RoundsView([], "kg/h")));

    [Fact]
    public void Banks_are_said_with_their_means()
    {
        var view = new BankMeansView([("Left bank", [8.9, 9.1]), ("Right bank", [8.3, 8.3])], 0.03);

        Assert.Equal("Left bank 9.0 kg/h, Right bank 8.3 kg/h.", BankMeansPicture.Sentence(view));
        Assert.Equal(4, XDocument.Parse(BankMeansPicture.ToSvg(view)).Descendants(Svg + "circle").Count());
    }

    [Theory]
    [InlineData("bypass:4", 0.125)]
    [InlineData("coupling:1", -0.25)]
    public void A_screw_head_shows_the_old_slot_dashed_and_the_new_one_solid(string key, double turns)
    {
        var svg = XDocument.Parse(TurnPicture.ToSvg(Plans.InLine(6).Find(key)!, turns, "t")).Root!;

        Assert.Single(svg.Descendants(Svg + "path"), p => p.Attribute("stroke-dasharray") is not null);
        Assert.Contains(svg.Descendants(Svg + "path"), p => p.Has("stroke", "var(--mark)") && p.Has("stroke-width", "8"));
    }
}
