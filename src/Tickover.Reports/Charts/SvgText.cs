using System.Globalization;
using System.Text;

namespace Tickover.Reports.Charts;

/// <summary>Writes attributes and text of SVG.</summary>
internal static class SvgText
{
    internal static StringBuilder Attribute(this StringBuilder svg, string name, string value) =>
        svg.Append(' ').Append(name).Append("=\"").Escaped(value).Append('"');

    internal static StringBuilder Attribute(this StringBuilder svg, string name, double value)
    {
        var finite = double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(nameof(value), value, $"{name} of a drawing is a finite number");
        return svg.Append(' ').Append(name).Append("=\"").Append(CultureInfo.InvariantCulture, $"{finite:0.##}").Append('"');
    }

    internal static StringBuilder Escaped(this StringBuilder svg, string text)
    {
        foreach (var letter in text)
        {
            _ = letter switch
            {
                '&' => svg.Append("&amp;"),
                '<' => svg.Append("&lt;"),
                '>' => svg.Append("&gt;"),
                '"' => svg.Append("&quot;"),
                // Control characters are not allowed in XML, even escaped
                < ' ' and not ('\t' or '\n' or '\r') => svg.Append('\uFFFD'),
                _ => svg.Append(letter),
            };
        }

        return svg;
    }
}
