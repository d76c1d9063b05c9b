using Tickover.Web.Frame;

namespace Tickover.Web.Documents;

internal static class DocumentEndpoints
{
    public static void MapDocuments(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/checks", (Documentation documents) => documents.Html("checks") is { } html
            ? Pages.Show<DocumentPage>(new { Heading = "Checks against the outside", Html = html })
            : Pages.NotFound("The checks are not part of this build.", "Run the acceptance tests; they write docs/checks.md."));
        routes.MapGet("/physics", (Documentation documents) => Pages.Show<EquationsPage>(new { Names = documents.Physics }));
        routes.MapGet("/decisions/{name}", (string name, Documentation documents) => documents.Html($"decisions/{name}") is { } html
            ? Pages.Show<DocumentPage>(new { Heading = "Why it is so", Html = html, BackTo = "/physics", BackWord = "Equations" })
            : Pages.NotFound("No such decision.", "Look among the equations."));
        routes.MapGet("/physics/{name}", (string name, Documentation documents) => documents.Html($"physics/{name}") is { } html
            ? Pages.Show<DocumentPage>(new { Heading = $"Equations: {name}", Html = html, BackTo = "/physics", BackWord = "Equations" })
            : Pages.NotFound("No such page on the physics.", "Look among the equations."));
    }
}
