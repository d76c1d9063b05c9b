using System.Globalization;
using System.Xml.Linq;
using Tickover.Reports.Balance;
using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;

namespace Tickover.Reports.Tests.Balance;

public sealed class EnginePictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<int, PictureSize> Engines()
    {
        var data = new TheoryData<int, PictureSize>();
        for (var k = 0; k < Plans.All.Count; k++)
        {
            data.Add(k, PictureSize.Full);
            data.Add(k, PictureSize.Phone);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public void Rings_keep_off_each_other_and_off_what_is_turned(int engine, PictureSize size)
    {
        var at = EngineGeometry.Of(Plans.All[engine], size);

        var rings = at.Rings.OrderBy(r => r.Key).ToArray();
        foreach (var (barrel, centre) in rings)
        {
            Assert.InRange(centre.X, at.RingReach, at.Width - at.RingReach);
            Assert.InRange(centre.Y, at.RingReach, at.Height - at.RingReach);
            Assert.All(rings.Where(r => r.Key != barrel), r => Assert.True(Apart(centre, r.Value) >= 2 * at.RingReach, $"rings {barrel} and {r.Key}"));
            Assert.All(at.Adjusters.Where(a => a.Form != AdjusterForm.Rod), a => Assert.True(Apart(centre, a.At) >= at.RingReach + 4, $"ring {barrel} and {a.Adjuster.Key}: {Apart(centre, a.At):0.0} of {at.RingReach:0.0}"));
        }

        Assert.Equal(Plans.All[engine].Barrels.Count, rings.Length);
        Assert.True(at.RingReach >= 24, $"a ring that reaches {at.RingReach:0.0} cannot be read");
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public void Every_adjuster_of_the_plan_is_drawn_inside_and_can_be_told_from_its_neighbour(int engine, PictureSize size)
    {
        var at = EngineGeometry.Of(Plans.All[engine], size);

        Assert.Equal(Plans.All[engine].Adjusters.Select(a => a.Key).Order(StringComparer.Ordinal), at.Adjusters.Select(a => a.Adjuster.Key).Order(StringComparer.Ordinal));
        foreach (var place in at.Adjusters)
        {
            Assert.InRange(place.At.X, 4, at.Width - 4);
            Assert.InRange(place.At.Y, 4, at.Height - 4);
            Assert.All(at.Adjusters.Where(a => a != place), a => Assert.True(Apart(place.At, a.At) >= 20, $"{place.Adjuster.Key} and {a.Adjuster.Key}: {Apart(place.At, a.At):0.0}"));
        }
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public void A_finger_finds_every_adjuster_and_takes_no_neighbour(int engine, PictureSize size)
    {
        var at = EngineGeometry.Of(Plans.All[engine], size);
        var areas = at.Adjusters.ToDictionary(a => a.Adjuster.Key, a => TouchArea.Of(a, at.Adjusters).Points, StringComparer.Ordinal);
        // twelve barrels leave less room; so do single barrels with stop and by-pass beside each other, which the trade does not have
        var crowded = Plans.All[engine].Barrels.Count > 8 || Plans.All[engine].Layout == Workshop.Balance.Plans.PlanLayout.ConstantDepression;

        foreach (var place in at.Adjusters)
        {
            var area = areas[place.Adjuster.Key];
            Assert.True(area.Max(p => p.X) - area.Min(p => p.X) >= (crowded ? 30 : 44), $"{place.Adjuster.Key} is {area.Max(p => p.X) - area.Min(p => p.X):0} wide");
            Assert.True(area.Max(p => p.Y) - area.Min(p => p.Y) >= (crowded ? 30 : 44), $"{place.Adjuster.Key} is {area.Max(p => p.Y) - area.Min(p => p.Y):0} high");
            Assert.All(area, p => Assert.All(at.Adjusters, other => Assert.True(Apart(p, place.At) <= Apart(p, other.At) + 1e-6, $"{place.Adjuster.Key} takes {other.Adjuster.Key}")));
        }
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public void No_word_lies_on_another_and_none_is_smaller_than_fourteen(int engine, PictureSize size)
    {
        var plan = Plans.All[engine];
        var standing = new[] { RingStanding.Low, RingStanding.High, RingStanding.CannotTell, RingStanding.Within };
        var rings = plan.Barrels.Select((b, k) => new RingView(b.Number) { Figure = k % 5 == 4 ? "" : "12.4", DeviationPart = k % 2 == 0 ? -0.18 : 0.18, LimitPart = 0.1, BandPart = 0.03, Standing = standing[k % 4], IsNext = k % 5 == 4 }).ToList();

        var texts = XDocument.Parse(EnginePicture.ToSvg(new EngineView { Plan = plan, Rings = rings, Size = size })).Descendants(Svg + "text").Where(t => t.Value.Length > 0).ToList();

        var at = EngineGeometry.Of(plan, size);
        var boxes = texts.ConvertAll(t => (t.Value, Box: BoxOf(t)));
        Assert.All(texts, t => Assert.True(Number(t, "font-size") >= 14, t.Value));
        Assert.All(boxes, b => Assert.True(b.Box.Left >= 0 && b.Box.Right <= at.Width + 1 && b.Box.Top >= 0 && b.Box.Bottom <= at.Height + 1, $"\"{b.Value}\" sticks out: {b.Box}"));
        for (var i = 0; i < boxes.Count; i++)
        {
            Assert.All(boxes.Skip(i + 1), b => Assert.False(b.Box.Overlaps(boxes[i].Box), $"\"{boxes[i].Value}\" {boxes[i].Box} lies on \"{b.Value}\" {b.Box}"));
        }
    }

    [Fact]
    public void The_left_bank_stands_left_upright_and_at_the_bottom_lying()
    {
        var plan = Plans.TwoBanks(8);
        var (lying, upright) = (EngineGeometry.Of(plan, PictureSize.Full), EngineGeometry.Of(plan, PictureSize.Phone));

        Assert.True(lying.Rings[1].Y > lying.Rings[5].Y);
        Assert.True(upright.Rings[1].X < upright.Rings[5].X);
        Assert.True(lying.Rings[1].X < lying.Rings[4].X && upright.Rings[1].Y < upright.Rings[4].Y);
    }

    [Fact]
    public void More_air_goes_right_and_full_travel_is_twenty_percent()
    {
        Assert.Equal(0, RingDrawing.Degrees(0));
        Assert.Equal(67.5, RingDrawing.Degrees(0.10), 1e-9);
        Assert.Equal(-135, RingDrawing.Degrees(-0.20), 1e-9);
        Assert.Equal(135, RingDrawing.Degrees(0.50), 1e-9);
        Assert.True(Arcs.At(new ChartPoint(0, 0), 1, RingDrawing.Degrees(0.05)).X > 0);
    }

    [Theory]
    [InlineData(0.125, false)]
    [InlineData(-0.125, true)]
    public void Out_is_anticlockwise_as_right_hand_threads_are(double turns, bool clockwise) =>
        Assert.Equal(clockwise, AdjusterDrawing.IsClockwise(Plans.InLine(6).Find("bypass:4")!, turns));

    [Fact]
    public void What_is_to_be_turned_is_marked_and_said_and_parts_lead_where_the_page_says()
    {
        var view = new EngineView { Plan = Plans.InLine(6), Mark = new EngineMark("bypass:4", 0.125), PartAddress = key => $"?part={key}" };

        var svg = XDocument.Parse(EnginePicture.ToSvg(view)).Root!;

        Assert.Contains("Carburettor 2, rear barrel, by-pass screw, out.", svg.Attribute("aria-label")!.Value, StringComparison.Ordinal);
        Assert.Contains(svg.Descendants(Svg + "a"), a => a.Has("data-part", "bypass:4") && a.Has("aria-current", "true") && a.Has("href", "?part=bypass:4"));
        Assert.Equal(6, svg.Descendants(Svg + "a").Count(a => a.Attribute("data-part")!.Value.StartsWith("barrel:", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_table_says_in_words_what_the_rings_show()
    {
        var view = new EngineView { Plan = Plans.InLine(4), Rings = [new RingView(1) { Figure = "3.6", DeviationPart = -0.11, Standing = RingStanding.Low }, new RingView(2) { Figure = "4.1", DeviationPart = 0.02, Standing = RingStanding.Within }] };

        var rows = EnginePicture.Table(view, "kg/h").Rows;

        Assert.Equal(["1", "3.6", "\u221211\u202F%", "low"], rows[0]);
        Assert.Equal(["2", "4.1", "+2\u202F%", "within"], rows[1]);
        Assert.Equal(["3", "", "", "not read"], rows[2]);
    }

    private static double Apart(ChartPoint a, ChartPoint b) => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2));

    private static Box BoxOf(XElement text)
    {
        var look = new Lettering { Size = Number(text, "font-size"), Bold = text.Has("font-weight", "700") };
        // Digits and short words: the mean advance holds, the generous part of it is taken off
        var width = look.WidthOf(text.Value) * 0.95;
        var left = Number(text, "x") - (text.Attribute("text-anchor")?.Value switch { "middle" => width / 2, "end" => width, _ => 0 });
        return new Box(left, Number(text, "y") - look.Size * 0.72, width, look.Size * 0.74);
    }

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
