using System.Globalization;
using System.Text.RegularExpressions;
using Tickover.Reports.Mixture;

namespace Tickover.Web.Mixture;

/// <summary>Puts the ring of the place looked at onto a picture that was drawn without one.</summary>
/// <remarks>The picture says in its data attributes where its plot lies and what its axes mean; the script reads the same.</remarks>
internal static partial class RingOnMap
{
    // The picture keeps this place under its words
    private const string Marks = "<g class=\"marks\">";

    // As large as a fingertip's print on the drawing: the place is seen round the finger.
    private const int Radius = 21;

    // At the edge of the plot the ring is cut off there, so that it never covers an axis.
    private const double Overhang = 5;

    /// <summary>The picture with the ring.</summary>
    /// <param name="picture">One svg element.</param>
    /// <param name="spot">The place.</param>
    /// <param name="id">Names the ring's cut-out; differs between the pictures of a page.</param>
    /// <returns>The picture with a ring at the place, or as it was where the place lies outside the plot.</returns>
    public static string Put(string picture, MapSpot spot, string id)
    {
        var axes = Attribute().Matches(picture[..picture.IndexOf('>', StringComparison.Ordinal)])
            .ToDictionary(m => m.Groups["name"].Value, m => m.Groups["value"].Value, StringComparer.Ordinal);
        var across = Part(axes, "x", spot.SpeedRpm);
        var up = Part(axes, "y", spot.ThrottleDegrees);
        if (across is < 0 or > 1 || up is < 0 or > 1)
        {
            return picture;
        }

        var (left, top, width, height) = (Number(axes, "plot-left"), Number(axes, "plot-top"), Number(axes, "plot-width"), Number(axes, "plot-height"));
        var cut = string.Create(
            CultureInfo.InvariantCulture,
            $"""<clipPath id="{id}-ring"><rect x="{left - Overhang:0.#}" y="{top - Overhang:0.#}" width="{width + 2 * Overhang:0.#}" height="{height + 2 * Overhang:0.#}"/></clipPath>""");
        var ring = Ring(left + across * width, top + (1 - up) * height);
        return picture.Replace(Marks + "</g>", $"""{Marks}{cut}<g clip-path="url(#{id}-ring)">{ring}</g></g>""", StringComparison.Ordinal);
    }

    private static double Part(Dictionary<string, string> axes, string axis, double value)
    {
        Func<double, double> stretch = string.Equals(axes[$"{axis}-scale"], "sqrt", StringComparison.Ordinal) ? v => Math.Sqrt(Math.Max(0, v)) : v => v;
        var (from, to) = (stretch(Number(axes, $"{axis}-from")), stretch(Number(axes, $"{axis}-to")));
        return (stretch(value) - from) / (to - from);
    }

    private static double Number(Dictionary<string, string> axes, string name) => double.Parse(axes[name], CultureInfo.InvariantCulture);

    private static string Ring(double x, double y) => string.Create(
        CultureInfo.InvariantCulture,
        $"""<g class="ring" data-ring transform="translate({x:0.#} {y:0.#})"><circle r="{Radius}" fill="none" stroke="#fff" stroke-width="9"/><circle r="{Radius}" fill="none" stroke="#2a2e9a" stroke-width="5"/><circle r="4" fill="#fff"/><circle r="2.5" fill="#2a2e9a"/></g>""");

    [GeneratedRegex("data-(?<name>[a-z-]+)=\"(?<value>[^\"]*)\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Attribute();
}
