using System.Globalization;

namespace Tickover.Workshop.Visits.Gates;

/// <summary>Days as they are said in sentences.</summary>
public static class DayText
{
    /// <summary>A day, such as "24 Nov".</summary>
    /// <param name="day">The day.</param>
    /// <returns>The text, in English whatever the machine speaks.</returns>
    public static string Of(DateOnly day) => day.ToString("d MMM", CultureInfo.InvariantCulture);

    /// <summary>A span of days, such as "today", "1 day ago", "7 days ago".</summary>
    /// <param name="day">The day.</param>
    /// <param name="today">Today.</param>
    /// <returns>The text.</returns>
    public static string Ago(DateOnly day, DateOnly today) => (today.DayNumber - day.DayNumber) switch
    {
        <= 0 => "today",
        1 => "yesterday",
        var days => $"{days.ToString(CultureInfo.InvariantCulture)} days ago",
    };
}
