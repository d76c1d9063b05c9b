using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.JetChoice;
using Tickover.Workshop.Visits;

namespace Tickover.Web.RoadLogs;

/// <summary>The workshop's shelf of jets and chokes.</summary>
internal static class ShelfEndpoints
{
    private const int Most = 10_000;

    public static void MapShelf(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/shelf", async (VisitDesk desk) => Pages.Show<ShelfPage>(new { Stock = await StockAsync(desk) }));
        routes.MapPost("/shelf", (VisitDesk desk) => desk.OnFormAsync(fields => KeepAsync(fields, desk))).GuardForm();
    }

    private static async Task<IReadOnlyList<StockJet>> StockAsync(VisitDesk desk) => await desk.Record.AllAsync<StockJet>();

    private static async Task<IResult> KeepAsync(FormFields fields, VisitDesk desk)
    {
        var part = JetParts.Find(fields.Text("part"));
        var (size, count) = (fields.Number("size", "Size"), fields.Whole("count", "How many"));
        if (part is null or { IsSetting: true } || size is not { } s || count is not { } n || s <= 0 || n is < 0 or > Most)
        {
            return desk.Refuse("Choose a part, and type its size and how many there are, such as 135 and 6.", "/shelf");
        }

        var id = StockJet.IdFor(part.Name, (double)s);
        var known = await desk.Record.FindAsync(id) ?? new StockJet { Id = id, Part = part.Name, Size = (double)s };
        return await desk.KeepAsync(fields, $"shelf: {n} of {part.Label.ToLowerInvariant()} {part.Text((double)s)}", null, "/shelf", known with { Count = n, Removed = false });
    }
}
