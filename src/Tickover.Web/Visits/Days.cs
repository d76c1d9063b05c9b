using System.Globalization;

namespace Tickover.Web.Visits;

/// <summary>Days and times as pages write them.</summary>
internal static class Days
{
    private static readonly CultureInfo British = CultureInfo.GetCultureInfo("en-GB");

    /// <summary>"12 Nov", with the year where it is another than this one.</summary>
    public static string Short(DateOnly day, DateOnly today) => day.ToString(day.Year == today.Year ? "d MMM" : "d MMM yyyy", British);

    /// <summary>"12 November 2026".</summary>
    public static string Long(DateOnly day) => day.ToString("d MMMM yyyy", British);

    /// <summary>"24 Nov 16:10" by the server's own clock.</summary>
    public static string Moment(DateTimeOffset moment, DateOnly today)
    {
        var local = moment.ToLocalTime();
        return $"{Short(DateOnly.FromDateTime(local.DateTime), today)} {local.ToString("HH:mm", CultureInfo.InvariantCulture)}";
    }

    /// <summary>As an input of the browser takes it.</summary>
    public static string Field(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";
}
