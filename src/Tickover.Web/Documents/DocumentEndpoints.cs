using Tickover.Web.Frame;

namespace Tickover.Web.Documents;

internal static class DocumentEndpoints
{
    // A guide is the document of the same name; its address says what it is about.
    private static readonly (string Address, string Name, string Heading, string BackTo, string BackWord)[] Guides =
    [
        ("/car-document", "car-document", "How a car is written down", "/cars/new", "Take a car in"),
        ("/linkage-document", "linkage-document", "How a linkage is written down", "/linkages", "Linkages"),
        ("/wall-document", "wall-document", "How a wall survey is written down", "/walls", "Walls"),
        ("/leak-document", "leak-document", "How a leak test is written down", "/walls", "Walls"),
        ("/supply-document", "supply-document", "How a fuel line is written down", "/supply", "Fuel lines"),
        ("/level-document", "level-document", "How float levels are written down", "/strip-down", "Levels and wear"),
        ("/wear-document", "wear-document", "How wear is written down", "/strip-down", "Levels and wear"),
        ("/build-document", "build-document", "How bench settings are written down", "/", "Shop"),
        ("/jets-document", "jets-document", "How measured jets are written down", "/", "Shop"),
        ("/balance-explained", "balance", "Balance, and how a plan is written down", "/", "Shop"),
        ("/tank-document", "tank-document", "How tanks are written down", "/tanks", "Tanks"),
        ("/gauge-document", "gauge-document", "How tanks and gauge are written down", "/gauges", "Gauges"),
        ("/faults-document", "faults-document", "How a case and a table of causes are written down", "/faults", "Fault finder"),
        ("/fault-finder-explained", "fault-finder", "How the fault finder weighs", "/faults", "Fault finder"),
        ("/tablets-explained", "tablets", "How tablets are let in", "/tablets", "Tablets"),
    ];

    public static void MapDocuments(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/checks", (Documentation documents) => documents.Html("checks") is { } html
            ? Pages.Show<DocumentPage>(new { Heading = "Checks against the outside", Html = Folded.Chapters(html, "checks") })
            : Pages.NotFound("The checks are not part of this build.", "Run the acceptance tests; they write docs/checks.md."));
        foreach (var (address, name, heading, backTo, backWord) in Guides)
        {
            routes.MapGet(address, (Documentation documents) => documents.Html(name) is { } html
                ? Pages.Show<DocumentPage>(new { Heading = heading, Html = html, BackTo = backTo, BackWord = backWord })
                : Pages.NotFound("The guide is not part of this build.", $"See docs/{name}.md."));
        }

        routes.MapGet("/physics", () => Pages.Show<EquationsPage>(new { }));
        routes.MapGet("/decisions/{name}", (string name, Documentation documents) => documents.Html($"decisions/{name}") is { } html
            ? Pages.Show<DocumentPage>(new { Heading = "Why it is so", Html = html, BackTo = "/physics", BackWord = "Equations" })
            : Pages.NotFound("No such decision.", "Look among the equations."));
        routes.MapGet("/physics/{name}", (string name, Documentation documents) => documents.Html($"physics/{name}") is { } html
            ? Pages.Show<DocumentPage>(new { Heading = $"Equations of {name}", Html = html, BackTo = "/physics", BackWord = "Equations" })
            : Pages.NotFound("No such page on the physics.", "Look among the equations."));
    }
}
