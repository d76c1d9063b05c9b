namespace Tickover.Web.Frame;

/// <summary>The three looks, remembered in a cookie so that the first byte of a page already has the right one.</summary>
public static class Theme
{
    /// <summary>Name of the cookie.</summary>
    public const string Cookie = "tickover-theme";

    /// <summary>The look of a browser that has not chosen.</summary>
    public const string Default = "paper";

    /// <summary>The looks with the words on their buttons.</summary>
    public static IReadOnlyList<(string Name, string Words)> All { get; } =
        [("paper", "Paper"), ("evening", "Evening"), ("daylight", "Daylight")];

    /// <summary>The look of a request.</summary>
    /// <param name="context">The request; null outside one.</param>
    /// <returns>A known name; the default for anything else in the cookie.</returns>
    public static string Of(HttpContext? context) => Known(context?.Request.Cookies[Cookie]) ?? Default;

    /// <summary>A name if it is one of the looks.</summary>
    /// <param name="name">What a form or a cookie says.</param>
    /// <returns>The name, or null.</returns>
    public static string? Known(string? name) => All.Any(t => string.Equals(t.Name, name, StringComparison.Ordinal)) ? name : null;
}
