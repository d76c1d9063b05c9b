using System.Globalization;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Papers;

/// <summary>States, sums and times in the words of the pages.</summary>
internal static class PaperWords
{
    private const int MinutesPerHour = 60;

    public static string Of(PartState state) => state switch
    {
        PartState.ToOrder => "To order",
        PartState.Ordered => "Ordered",
        PartState.Here => "Here, not fitted",
        _ => "Fitted",
    };

    public static string Of(ApprovalAnswer answer) => answer switch
    {
        ApprovalAnswer.Open => "No answer yet",
        ApprovalAnswer.Yes => "Yes",
        _ => "No",
    };

    public static string Of(WaitsOn ball) => ball switch
    {
        WaitsOn.Us => "Us",
        WaitsOn.Owner => "The owner",
        WaitsOn.Parts => "Parts",
        _ => "The clock: curing, soaking, settling",
    };

    /// <summary>A sum, such as "GBP 1,240.00".</summary>
    public static string Money(decimal sum, string currency) => string.Create(CultureInfo.InvariantCulture, $"{currency} {sum:#,##0.00}");

    /// <summary>A time, such as "3 h 20 min".</summary>
    public static string Time(int minutes) => (minutes / MinutesPerHour, minutes % MinutesPerHour) switch
    {
        (0, var rest) => $"{rest} min",
        (var hours, 0) => $"{hours} h",
        var (hours, rest) => $"{hours} h {rest} min",
    };

    /// <summary>A number as a field takes it; empty where there is none.</summary>
    public static string Plain(decimal? number) => number?.ToString("0.##", CultureInfo.InvariantCulture) ?? "";

    /// <summary>"One part", "3 parts".</summary>
    public static string Count(int count, string one, string many) => count == 1 ? $"1 {one}" : $"{count} {many}";

    /// <summary>The choices of a few words.</summary>
    public static IReadOnlyList<(string Value, string Words)> Choices<T>(Func<T, string> words)
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(v => (v.ToString(), words(v)))];

    /// <summary>A name of code as words: "EstimateHours" as "Estimate hours".</summary>
    public static string Split(string name) =>
        string.Concat(name.Select((c, k) => k > 0 && char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : c.ToString()));
}
