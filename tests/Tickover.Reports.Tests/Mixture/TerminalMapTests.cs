using System.Text.RegularExpressions;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Tests.Mixture;

public sealed partial class TerminalMapTests
{
    [Theory]
    [InlineData(TerminalColours.None)]
    [InlineData(TerminalColours.Palette256)]
    [InlineData(TerminalColours.TrueColour)]
    public void The_signs_tell_everything_with_and_without_colour(TerminalColours colours)
    {
        var text = TerminalMap.Render(Maps.Typical(), 1, 80, colours);
        var map = Picture(Escapes().Replace(text, ""));

        Assert.Equal(colours == TerminalColours.None, !text.Contains('\u001b', StringComparison.Ordinal));
        Assert.Contains('+', map);
        Assert.Contains('/', map);
        Assert.Contains("/ no answer: driven by the car", text, StringComparison.Ordinal);
        Assert.Contains("Barrels 1 to 4. Too lean", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(40)]
    [InlineData(80)]
    [InlineData(120)]
    public void Lines_of_the_map_fit_the_width(int width)
    {
        var lines = Picture(TerminalMap.Render(Maps.Typical(), 1, width, TerminalColours.None)).Split('\n');

        Assert.All(lines, l => Assert.True(l.Length <= width, $"{l.Length} > {width}: {l}"));
    }

    [Fact]
    public void Every_coloured_line_ends_reset()
    {
        var lines = TerminalMap.Render(Maps.Typical(), 1, 60, TerminalColours.TrueColour).Split('\n').Where(l => l.Contains('\u001b'));

        Assert.All(lines, l => Assert.Equal(-1, l[(l.LastIndexOf("\u001b[0m", StringComparison.Ordinal) + 4)..].IndexOf('\u001b')));
    }

    [Fact]
    public void The_picture_has_its_lean_hollow_where_the_map_has_it()
    {
        var lines = Picture(TerminalMap.Render(Maps.Typical(), 1, 80, TerminalColours.None)).Split('\n');

        // 2,750 rpm is 36 % of the way across, 11° is √(11/80) = 37 % of the way up; too rich above it, the car drives below
        var column = 6 + (int)(0.36 * 73);
        Assert.Equal('+', lines[(int)(0.66 * lines.Length)][column]);
        Assert.Equal('/', lines[^1][column]);
    }

    [Fact]
    public void A_map_without_answers_is_still_text()
    {
        var text = TerminalMap.Render(Maps.Of((_, _) => Maps.Point(0, PointValidity.NoFuel), 3, 2), 1, 10, TerminalColours.TrueColour);

        Assert.Contains("No answer anywhere", text, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
    }

    private static string Picture(string text) =>
        string.Join('\n', text.Split("\n\n")[1].Split('\n').TakeWhile(l => !l.EndsWith("rpm", StringComparison.Ordinal)));

    [GeneratedRegex("\u001b\\[[0-9;]*m", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Escapes();
}
