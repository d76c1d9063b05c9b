using Tickover.Web.Frame;
using Tickover.Web.Papers;
using Tickover.Workshop.Visits.Advising;

namespace Tickover.Web.Visits;

/// <summary>The cars in the shop: the first page.</summary>
internal static class ShopEndpoints
{
    public static void MapShop(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/", async (VisitDesk desk, IMixtureAdvice mixture, CancellationToken cancellation) =>
        {
            var size = await desk.Record.SizeAsync(cancellation);
            var workshop = await desk.Record.WorkshopAsync(cancellation);
            if (size.LastAct is null)
            {
                return Results.Redirect("/begin");
            }

            var visits = await desk.Record.OpenVisitsAsync(cancellation);
            return Pages.Show<ShopPage>(new { Board = ShopBoard.Of(visits, desk.Now, mixture), Workshop = workshop, desk.Today });
        });
        routes.MapWho();
        routes.MapPapers();
    }
}
