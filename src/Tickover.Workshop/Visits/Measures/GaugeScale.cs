using System.Globalization;

namespace Tickover.Workshop.Visits.Measures;

/// <summary>The place of a gauge's needle, from E (0) to F (1), in the sixteenths an eye can tell.</summary>
public static class GaugeScale
{
    private const int Sixteenths = 16;

    private static readonly Dictionary<string, double> Spoken = new(StringComparer.OrdinalIgnoreCase)
    {
        ["E"] = 0,
        ["empty"] = 0,
        ["quarter"] = 0.25,
        ["a quarter"] = 0.25,
        ["half"] = 0.5,
        ["three quarters"] = 0.75,
        ["F"] = 1,
        ["full"] = 1,
    };

    /// <summary>Reads a place said in words, such as "E" or "half".</summary>
    /// <param name="text">The text.</param>
    /// <returns>0 to 1; null where it is none of the words.</returns>
    public static double? Read(string? text) => text is not null && Spoken.TryGetValue(text.Trim(), out var place) ? place : null;

    /// <summary>A place as it is said, to the nearest sixteenth.</summary>
    /// <param name="place">0 to 1.</param>
    /// <returns>"E", "F" or a fraction such as "3/8"; in percent beyond the scale, empty where it is not finite.</returns>
    public static string Show(double place)
    {
        if (!double.IsFinite(place))
        {
            return "";
        }

        if (place is < 0 or > 1)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{place * 100:0} %").Replace('-', '\u2212');
        }

        var parts = (int)Math.Round(place * Sixteenths, MidpointRounding.AwayFromZero);
        var below = Sixteenths;
        while (parts % 2 == 0 && parts > 0 && below > 1)
        {
            parts /= 2;
            below /= 2;
        }

        return parts == 0 ? "E" : below == 1 ? "F" : string.Create(CultureInfo.InvariantCulture, $"{parts}/{below}");
    }
}
