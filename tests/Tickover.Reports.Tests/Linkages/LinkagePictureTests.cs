using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Tickover.Reports.Linkages;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Linkages;

namespace Tickover.Reports.Tests.Linkages;

/// <summary>The picture of a linkage: every carburettor named with its angle, to scale, nothing outside, the same figures in the table.</summary>
public sealed partial class LinkagePictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly LinkageAnalysis Osprey = LinkageAnalyst.Of(LinkageDocument.Read(File.ReadAllText(Path.Combine(Root(), "samples", "osprey.linkage.json"))).Linkage!);

    public static TheoryData<PictureSize, double> Places => new() { { PictureSize.Full, 0 }, { PictureSize.Full, 0.25 }, { PictureSize.Full, 1 }, { PictureSize.Phone, 0 }, { PictureSize.Phone, 0.25 }, { PictureSize.Phone, 1 } };

    [Theory]
    [MemberData(nameof(Places))]
    public void Every_carburettor_has_its_name_and_its_angle(PictureSize size, double down)
    {
        var words = Draw(size, down).Descendants(Svg + "text").Select(t => t.Value).ToArray();
        var moment = LinkageAnalyst.At(Osprey.Linkage, down).Moment;

        for (var i = 0; i < Osprey.Names.Count; i++)
        {
            Assert.Contains(Osprey.Names[i], words, StringComparer.Ordinal);
            var angle = string.Create(CultureInfo.InvariantCulture, $"{moment.Plates[i].Degrees:0.0}°");
            Assert.Contains(words, w => w.Split(", ")[0].Equals(angle, StringComparison.Ordinal)); // its air beside or beneath
        }
    }

    [Theory]
    [MemberData(nameof(Places))]
    public void No_word_is_too_small_or_stands_outside(PictureSize size, double down)
    {
        var svg = Draw(size, down);
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
    public void A_plate_shows_as_narrow_as_it_is_open()
    {
        // At the end of the travel plates stand nearly along their bores: the drawn ellipses are slivers.
        static double Narrowest(double down) => Draw(PictureSize.Full, down).Descendants(Svg + "path")
            .Where(p => p.Attribute("fill")?.Value is "var(--metal-2)")
            .Min(p => Width(p.Attribute("d")!.Value));

        Assert.True(Narrowest(1) < 0.15 * Narrowest(0));
    }

    [Fact]
    public void What_is_to_be_set_is_marked_until_it_is_set()
    {
        Assert.Contains("left bank rod", Draw(PictureSize.Full, 0.25).Descendants(Svg + "text").Select(t => t.Value), StringComparer.Ordinal);

        var set = XDocument.Parse(LinkagePicture.ToSvg(View(PictureSize.Full, 0.25) with { Setting = LinkageSetting.AsAdvised })).Root!;
        Assert.DoesNotContain("left bank rod", set.Descendants(Svg + "text").Select(t => t.Value), StringComparer.Ordinal);
    }

    [Fact]
    public void The_table_has_the_course_by_tenths()
    {
        var table = LinkageTable.Of(View(PictureSize.Full, 0));

        Assert.Equal(["Pedal down", "left front", "left rear", "right front", "right rear", "Limit"], table.Columns);
        Assert.Equal(11, table.Rows.Count);
        Assert.StartsWith(Osprey.Course[0].Plates[0].Degrees.ToString("0.0", CultureInfo.InvariantCulture) + "°, +40", table.Rows[0][1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_its_own_needs_no_style_sheet() =>
        Assert.Equal("svg", XDocument.Parse(LinkagePicture.ToFile(View(PictureSize.Full, 0.5))).Root!.Name.LocalName);

    private static XElement Draw(PictureSize size, double down) => XDocument.Parse(LinkagePicture.ToSvg(View(size, down))).Root!;

    private static LinkageView View(PictureSize size, double down) => new() { Analysis = Osprey, Down = down, Size = size, IdPrefix = "test" };

    // Across the car spindles stand upright on the wide plan: a plate's width lies level. A path is its start, then steps.
    private static double Width(string path)
    {
        var (x, least, most) = (0.0, double.MaxValue, double.MinValue);
        foreach (var number in OneNumber().Matches(path).Select(m => Number(m.Value)).Where((_, i) => i % 2 == 0))
        {
            x += number;
            (least, most) = (Math.Min(least, x), Math.Max(most, x));
        }

        return most - least;
    }

    [GeneratedRegex(@"-?(?:\d+\.?\d*|\.\d+)", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex OneNumber();

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "Tickover.slnx")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }
}
