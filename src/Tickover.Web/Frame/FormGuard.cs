using Microsoft.AspNetCore.Antiforgery;

namespace Tickover.Web.Frame;

/// <summary>Turns away forms that did not come from a page of ours, or that are too long.</summary>
internal static class FormGuard
{
    /// <summary>Longest body of a form: a pasted document and the fields about it.</summary>
    public const long LongestForm = 4 * 1024 * 1024;

    public static RouteHandlerBuilder GuardForm(this RouteHandlerBuilder route) => route
        .AddEndpointFilter(async (context, next) =>
        {
            var request = context.HttpContext.Request;
            if (!request.HasFormContentType)
            {
                return Pages.Error(StatusCodes.Status415UnsupportedMediaType, "This address takes a form.", ["Send it from the page."]);
            }

            var antiforgery = context.HttpContext.RequestServices.GetRequiredService<IAntiforgery>();
            return await antiforgery.IsRequestValidAsync(context.HttpContext)
                ? await next(context)
                : Pages.Error(
                    StatusCodes.Status400BadRequest,
                    "This form is from an older page or from elsewhere.",
                    ["Nothing was changed.", "Go back, reload the page and send it again; what you typed is still in the form."]);
        })
        .WithMetadata(new RequestLimit(LongestForm));

    private sealed record RequestLimit(long? MaxRequestBodySize) : Microsoft.AspNetCore.Http.Metadata.IRequestSizeLimitMetadata;
}
