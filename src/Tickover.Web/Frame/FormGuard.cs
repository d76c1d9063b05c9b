using Microsoft.AspNetCore.Antiforgery;

namespace Tickover.Web.Frame;

/// <summary>Turns away forms that did not come from a page of ours, or that are too long.</summary>
internal static class FormGuard
{
    /// <summary>Longest body of a form: a pasted document and the fields about it.</summary>
    public const long LongestForm = 4 * 1024 * 1024;

    /// <summary>
    /// Header of a form that the outbox of a tablet sends, holding the key of the entry. A page from elsewhere cannot set it
    /// without asking first, and is never told yes.
    /// </summary>
    public const string OutboxHeader = "Tickover-Outbox";

    public static RouteHandlerBuilder GuardForm(this RouteHandlerBuilder route, long longest = LongestForm) => route
        .AddEndpointFilter(async (context, next) =>
        {
            var request = context.HttpContext.Request;
            if (!request.HasFormContentType)
            {
                return Pages.Error(StatusCodes.Status415UnsupportedMediaType, "This address takes a form.", ["Send it from the page."]);
            }

            return IsFromOutbox(request) || await IsFromPageAsync(context.HttpContext)
                ? await next(context)
                : Pages.Error(
                    StatusCodes.Status400BadRequest,
                    "This form is from an older page or from elsewhere.",
                    ["Nothing was changed.", "Go back, reload the page and send it again; what you typed is still in the form."]);
        })
        .WithMetadata(new RequestLimit(longest));

    // An entry may wait for days in the outbox, longer than any token is good for: the header and the origin stand in for it.
    private static bool IsFromOutbox(HttpRequest request) =>
        request.Headers[OutboxHeader] is [{ Length: > 0 }] && RequestOrigin.IsOurs(request);

    private static async Task<bool> IsFromPageAsync(HttpContext context) =>
        !RequestOrigin.IsForeign(context.Request)
        && await context.RequestServices.GetRequiredService<IAntiforgery>().IsRequestValidAsync(context);

    private sealed record RequestLimit(long? MaxRequestBodySize) : Microsoft.AspNetCore.Http.Metadata.IRequestSizeLimitMetadata;
}
