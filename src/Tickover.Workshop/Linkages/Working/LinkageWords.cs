using System.Globalization;

namespace Tickover.Workshop.Linkages.Working;

/// <summary>Figures of a linkage in the trade's words.</summary>
internal static class LinkageWords
{
    private const char Thin = '\u202F';
    private static readonly string[] Counts = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight"];
    private static readonly string[] Eighths = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];
    private static readonly string[] Spoken = ["", "an eighth of a turn", "a quarter of a turn", "three eighths of a turn", "half a turn", "five eighths of a turn", "three quarters of a turn", "seven eighths of a turn"];

    public static string Count(int count) => count < Counts.Length ? Counts[count] : count.ToString(CultureInfo.InvariantCulture);

    public static string List(IReadOnlyList<string> names) => names.Count switch
    {
        0 => "none",
        1 => names[0],
        _ => $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}",
    };

    public static string Percent(double part) => string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(part) * 100:0}{Thin}%");

    public static string Millimetres(double millimetres) => string.Create(CultureInfo.InvariantCulture, $"{millimetres:0.0}{Thin}mm");

    public static string Degrees(double degrees) => string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(degrees):0.0}°");

    /// <summary>Where the pedal is, such as "with the pedal up" or "30 % down".</summary>
    public static string Pedal(double down) => down switch
    {
        <= 0.001 => "with the pedal up",
        <= 0.05 => "just off idle",
        >= 0.999 => "with the pedal down",
        _ => $"with the pedal {Percent(down)} down",
    };

    /// <summary>Turns of a thread, such as "half a turn" or "1½ turns"; finer steps in hundredths.</summary>
    public static string Turns(double turns)
    {
        var eighths = Math.Abs(turns) * Eighths.Length;
        var count = (int)Math.Round(eighths);
        if (Math.Abs(eighths - count) > 0.01)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(turns):0.##} turns");
        }

        var (whole, part) = Math.DivRem(count, Eighths.Length);
        return whole == 0 ? Spoken[part] : string.Create(CultureInfo.InvariantCulture, $"{whole}{Eighths[part]} turn{(whole == 1 && part == 0 ? "" : "s")}");
    }
}
