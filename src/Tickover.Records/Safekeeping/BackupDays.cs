using System.Globalization;

namespace Tickover.Records.Safekeeping;

/// <summary>Which of the daily backups are kept.</summary>
public static class BackupDays
{
    /// <summary>Days that are kept each.</summary>
    public const int Daily = 7;

    /// <summary>Weeks of which the last backup is kept.</summary>
    public const int Weekly = 4;

    /// <summary>The days to keep: the last seven there are, and the last of each of the last four weeks there are.</summary>
    /// <param name="days">Days of which there is a backup.</param>
    /// <param name="today">Today's day, which is kept whatever a clock set back makes of it.</param>
    /// <returns>The days to keep.</returns>
    public static IReadOnlySet<DateOnly> Kept(IEnumerable<DateOnly> days, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(days);
        var newestFirst = days.OrderDescending().ToList();
        var weekly = newestFirst.GroupBy(Week).Select(week => week.First()).Take(Weekly);
        return newestFirst.Take(Daily).Concat(weekly).Append(today).ToHashSet();
    }

    // ISO 8601: a week belongs to the year of its Thursday.
    private static (int Year, int Week) Week(DateOnly day)
    {
        var moment = day.ToDateTime(TimeOnly.MinValue);
        return (ISOWeek.GetYear(moment), ISOWeek.GetWeekOfYear(moment));
    }
}
