using System.Globalization;
using Tickover.Workshop.Linkages.Working;

namespace Tickover.Workshop.Linkages;

/// <summary>A move in the words said aloud.</summary>
public static class LinkageMoveWords
{
    /// <summary>What to do, such as "Shorten left bank rod by half a turn".</summary>
    /// <param name="move">The move.</param>
    /// <returns>A sentence without its stop.</returns>
    public static string Act(LinkageMove move)
    {
        ArgumentNullException.ThrowIfNull(move);
        var (name, turns) = (move.Adjuster.Name, LinkageWords.Turns(move.Turns));
        return move.Adjuster.Kind switch
        {
            LinkageAdjusterKind.Rod => $"{(move.More > 0 ? "Lengthen" : "Shorten")} {name} by {turns}",
            LinkageAdjusterKind.Coupling => $"Turn the screw of {name} {turns}, so that the far side stands {LinkageWords.Degrees(move.More)} {(move.More > 0 ? "further open" : "further shut")}",
            _ => $"Slacken the clamp of {name} and turn the lever {LinkageWords.Degrees(move.More)} {(move.More > 0 ? "clockwise" : "anticlockwise")} on its shaft",
        };
    }

    /// <summary>From what to what, such as "118.5 to 118.0 mm".</summary>
    /// <param name="move">The move.</param>
    /// <returns>Figures with their unit.</returns>
    public static string Figures(LinkageMove move)
    {
        ArgumentNullException.ThrowIfNull(move);
        var format = move.Adjuster.Kind is LinkageAdjusterKind.Rod ? "0.00" : "0.0";
        var unit = move.Adjuster.Kind is LinkageAdjusterKind.Rod ? "\u202Fmm" : "°";
        return string.Create(CultureInfo.InvariantCulture, $"{Signed(move.Adjuster.Value, format)} to {Signed(move.Value, format)}{unit}");
    }

    private static string Signed(double value, string format)
    {
        var text = Math.Abs(value).ToString(format, CultureInfo.InvariantCulture);
        return value < 0 && text.Any(c => c is >= '1' and <= '9') ? "\u2212" + text : text;
    }
}
