using System.Globalization;
using System.Xml.Linq;
using Tickover.Reports.Leaks;
using Tickover.Reports.Mixture;
using Tickover.Reports.Walls;
using Tickover.Workshop.Leaks;
using Tickover.Workshop.Walls;

namespace Tickover.Reports.Tests.Walls;

/// <summary>Pictures of walls and leak tests: every reading in figures, nothing too small or outside, always a band.</summary>
public sealed class WallPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly WallAnalysis Tern = WallAnalyst.Of(WallDocument.Read(Sample("tern.wall.json")).Survey!);
    private static readonly LeakAnalysis Leak = LeakAnalyst.Of(LeakDocument.Read(Sample("tern.leak.json")).Sheet!);

    public static TheoryData<string, PictureSize> Pictures => new()
    {
        { "map", PictureSize.Full }, { "map", PictureSize.Phone }, { "years", PictureSize.Full }, { "years", PictureSize.Phone }, { "leak", PictureSize.Full }, { "leak", PictureSize.Phone },
    };

    [Theory]
    [InlineData(PictureSize.Full)]
    [InlineData(PictureSize.Phone)]
    public void Every_reading_stands_in_its_cell_in_figures_and_every_cell_says_what_it_is(PictureSize size)
    {
        var map = Draw("map", size);

        Assert.All(Tern.Survey.Cells, cell =>
        {
            var part = map.Descendants(Svg + "a").Single(a => string.Equals(a.Attribute("data-part")!.Value, cell.Name, StringComparison.Ordinal));
            Assert.StartsWith(cell.Name + ", ", part.Attribute("aria-label")!.Value, StringComparison.Ordinal);
            Assert.Equal(WallFigures.Cell(cell.Reading), part.Element(Svg + "text")?.Value ?? "");
        });
    }

    [Theory]
    [MemberData(nameof(Pictures))]
    public void No_word_is_too_small_or_stands_outside(string picture, PictureSize size)
    {
        var svg = Draw(picture, size);
        var box = svg.Attribute("viewBox")!.Value.Split(' ').Select(Number).ToArray();

        Assert.All(svg.Descendants(Svg + "text"), t =>
        {
            var (x, length) = (Number(t.Attribute("x")!.Value), 0.5 * Number(t.Attribute("font-size")!.Value) * t.Value.Length);
            var left = t.Attribute("text-anchor")?.Value switch { "middle" => x - length / 2, "end" => x - length, _ => x };
            Assert.True(Number(t.Attribute("font-size")!.Value) >= 14, t.Value);
            Assert.True(left >= -1 && left + length <= box[2] + 1, $"{t.Value} from {left} to {left + length} of {box[2]}");
            Assert.InRange(Number(t.Attribute("y")!.Value), 0, box[3]);
        });
    }

    [Fact]
    public void The_years_are_a_band_between_two_lines()
    {
        var label = Draw("years", PictureSize.Full).Attribute("aria-label")!.Value;

        Assert.Contains("now 7\u202F% (under 1\u202F% to 26\u202F%)", label, StringComparison.Ordinal);
        Assert.Equal(4, WallTable.OfYears(Tern).Columns.Count);
    }

    [Fact]
    public void Cells_of_the_phone_are_wide_enough_for_a_finger()
    {
        var rectangles = Draw("map", PictureSize.Phone).Descendants(Svg + "a").Select(a => a.Descendants(Svg + "rect").First());

        Assert.All(rectangles, r => Assert.True(Number(r.Attribute("width")!.Value) >= 48 && Number(r.Attribute("height")!.Value) >= 48));
    }

    private static XElement Draw(string picture, PictureSize size)
    {
        var view = new WallView { Analysis = Tern, Size = size, IdPrefix = "w", Chosen = "B3", Address = cell => $"/walls/tern?cell={cell}" };
        return XElement.Parse(picture switch
        {
            "map" => WallMapPicture.ToSvg(view),
            "years" => HoleChancePicture.ToSvg(view),
            _ => LeakPicture.ToSvg(Leak, size, "w"),
        });
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Sample(string name)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "Tickover.slnx")))
        {
            folder = folder.Parent;
        }

        return File.ReadAllText(Path.Combine(folder.FullName, "samples", name));
    }
}
