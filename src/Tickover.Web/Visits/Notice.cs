namespace Tickover.Web.Visits;

/// <summary>Carries one sentence from a form to the page that follows it.</summary>
internal static class Notice
{
    private const string Cookie = "tickover-notice";
    private const int LongestWords = 300;
    private static readonly TimeSpan Kept = TimeSpan.FromSeconds(30);

    /// <summary>Leaves a sentence for the next page.</summary>
    public static void Leave(HttpContext context, string words) => context.Response.Cookies.Append(
        Cookie,
        Uri.EscapeDataString(words.Length > LongestWords ? string.Concat(words.AsSpan(0, LongestWords), "…") : words),
        new CookieOptions { MaxAge = Kept, HttpOnly = true, SameSite = SameSiteMode.Strict, IsEssential = true });

    /// <summary>Takes what was left, once.</summary>
    public static string? Take(HttpContext? context)
    {
        if (context?.Request.Cookies[Cookie] is not { Length: > 0 } words || context.Request.Method is not "GET")
        {
            return null;
        }

        if (!context.Response.HasStarted)
        {
            context.Response.Cookies.Delete(Cookie);
        }

        return Uri.UnescapeDataString(words);
    }
}
