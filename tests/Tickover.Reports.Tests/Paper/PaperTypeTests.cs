using System.Text;
using Tickover.Reports.Charts;
using Tickover.Reports.Fonts;
using Tickover.Reports.Paper;
using Tickover.Reports.Tests.HandOver;

namespace Tickover.Reports.Tests.Paper;

/// <summary>Type and ink.</summary>
public sealed class PaperTypeTests
{
    [Fact]
    public void Every_character_we_write_is_in_the_type_we_print_with()
    {
        // All texts that reach paper are written in these sources; whatever is not ASCII in them must have a glyph in every face
        string[] folders = ["src/Tickover.Reports/Paper", "src/Tickover.Reports/HandOver", "src/Tickover.Workshop/Visits", "src/Tickover.Workshop/Demonstration"];
        var used = folders.SelectMany(f => Directory.GetFiles(Path.Combine(Visits.Root(), f), "*.cs", SearchOption.AllDirectories)).Append(Path.Combine(Visits.Root(), "src/Tickover.Reports/Shown.cs"))
            .SelectMany(f => File.ReadAllText(f).EnumerateRunes()).Where(r => r.Value > '~').ToHashSet();
        used.UnionWith("λ½¼¾⅛⅜⅝⅞−±°→≤≥·é…–—‘’“”£€²³₂Ωµ×\u00a0\u202f".EnumerateRunes());
        used.Remove(new Rune(0xFEFF));
        used.Remove(new Rune(0xFFFD));

        Assert.InRange(used.Count, 30, 500);
        foreach (var face in new[] { Typeface.Regular, Typeface.Bold, Typeface.Italic })
        {
            Assert.Equal("", string.Concat(used.Where(r => FontShelf.For(r.Value, face) is null)));
        }
    }

    [Fact]
    public void Widths_are_those_of_the_font()
    {
        // hmtx of Noto Sans Regular: 572 units of 1,000 for every digit, 260 for the space
        Assert.All("0123456789", d => Assert.Equal(0.572, FontShelf.Of(Typeface.Regular).AdvanceOf(d), 3));
        Assert.All("0123456789", d => Assert.Equal(0.572, FontShelf.Of(Typeface.Bold).AdvanceOf(d), 3));
        Assert.Equal(0.26, FontShelf.Of(Typeface.Regular).AdvanceOf(' '), 3);
        Assert.False(FontShelf.Of(Typeface.Regular).Has(0x5D0));
    }

    [Theory]
    [InlineData("ink")]
    [InlineData("ink-2")]
    [InlineData("unsafe")]
    [InlineData("soon")]
    [InlineData("watch")]
    [InlineData("mark")]
    public void Words_stand_out_from_the_paper(string role)
    {
        // WCAG 2.2, success criterion 1.4.6: 7 to 1; the relative luminance is that of the same document
        Assert.True(1.05 / (Luminance(PaperColours.ByRole[role]) + 0.05) >= 7);
    }

    private static double Luminance(string hex)
    {
        double Part(int at)
        {
            var value = Convert.ToInt32(hex.Substring(at, 2), 16) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }

        return 0.2126 * Part(1) + 0.7152 * Part(3) + 0.0722 * Part(5);
    }

    [Fact]
    public void Marks_differ_by_shape_alone()
    {
        var shapes = Enum.GetValues<Workshop.Visits.Severity>().Select(s =>
        {
            var drawing = new SvgDrawing("x");
            SeverityMark.Draw(drawing, s, new Box(0, 0, 20, 20));
            var svg = drawing.ToSvg(new SvgFrame { Width = 20, Height = 20, ClassName = "", Label = "" });
            return svg[svg.IndexOf("</defs>", StringComparison.Ordinal)..].Split(" fill")[0];
        }).ToList();

        Assert.Equal(3, shapes.Distinct(StringComparer.Ordinal).Count());
    }
}
