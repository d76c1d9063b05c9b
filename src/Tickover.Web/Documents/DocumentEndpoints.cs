using Tickover.Web.Frame;

namespace Tickover.Web.Documents;

internal static class DocumentEndpoints
{
    public static void MapDocuments(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/checks", (Documentation documents) => documents.Html("checks") is { } html
            ? Pages.Show<DocumentPage>(new { Heading = "Checks against the outside", Html = Folded.Chapters(html, "checks") })
            : Pages.NotFound("The checks are not part of this build.", "Run the acceptance tests; they write docs/checks.md."));
        routes.MapGet("/car-document", (Documentation documents) => documents.Html("car-document") is { } html
            ? Pages.Show<DocumentPage>(new { Heading = "How a car is written down", Html = html, BackTo = "/cars/new", BackWord = "Take a car in" })
            : Pages.NotFound("The guide is not part of this build.", "See docs/car-document.md."));
        routes.MapGet("/linkage-document", (Documentation documents) => documents.Html("linkage-document") is { } html
            ? Pages.Show<DocumentPage>(new { Heading = "How a linkage is written down", Html = html, BackTo = "/linkages", BackWord = "Linkages" })
            : Pages.NotFound("The guide is not part of this build.", "See docs/linkage-document.md."));
        routes.MapGet("/gauge-document", (Documentation documents) => documents.Html("gauge-document") is { } html
            ? Pages.Show<DocumentPage>(new { Heading = "How tanks and gauge are written down", Html = html, BackTo = "/gauges", BackWord = "Gauges" })
            : Pages.NotFound("The guide is not part of this build.", "See docs/gauge-document.md."));
        routes.MapGet("/tablets-explained", (Documentation documents) => documents.Html("tablets") is { } html
            ? Pages.Show<DocumentPage>(new { Heading = "How tablets are let in", Html = html, BackTo = "/tablets", BackWord = "Tablets" })
            : Pages.NotFound("The guide is not part of this build.", "See docs/tablets.md."));
        routes.MapGet("/physics", () => Pages.Show<EquationsPage>(new { }));
        routes.MapGet("/decisions/{name}", (string name, Documentation documents) => documents.Html($"decisions/{name}") is { } html
            ? Pages.Show<DocumentPage>(new { Heading = "Why it is so", Html = html, BackTo = "/physics", BackWord = "Equations" })
            : Pages.NotFound("No such decision.", "Look among the equations."));
        routes.MapGet("/physics/{name}", (string name, Documentation documents) => documents.Html($"physics/{name}") is { } html
            ? Pages.Show<DocumentPage>(new { Heading = $"Equations of {name}", Html = html, BackTo = "/physics", BackWord = "Equations" })
            : Pages.NotFound("No such page on the physics.", "Look among the equations."));
    }
}
