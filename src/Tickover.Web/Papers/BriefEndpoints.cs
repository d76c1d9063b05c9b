using System.Globalization;
using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Papers;

/// <summary>The brief of a visit: what was promised, who owns the car, who has the ball.</summary>
internal static class BriefEndpoints
{
    public static void MapBrief(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/visits/{id}/brief", (string id, VisitDesk desk) => desk.OnVisitAsync(id, record => Pages.Show<BriefPage>(new { Record = record })));
        routes.MapPost("/visits/{id}/brief", (string id, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) => KeepAsync(record, fields, desk))).GuardForm();
    }

    private static Task<IResult> KeepAsync(VisitRecord record, FormFields fields, VisitDesk desk)
    {
        var asked = BriefFields.Longer(fields, record.Visit, desk.Today) with { Version = fields.Version };
        List<RecordItem> items = [];
        if (BriefFields.Owner(fields, record.Owner) is { } owner)
        {
            _ = int.TryParse(fields.Text("ownerVersion"), NumberStyles.None, CultureInfo.InvariantCulture, out var version);
            asked = asked with { Owner = owner.Id };
            if (owner != record.Owner)
            {
                items.Add(owner with { Version = version });
            }

            if (record.Car.Owner is null)
            {
                items.Add(record.Car with { Owner = owner.Id });
            }
        }

        items.Add(asked);
        return desk.KeepOrShowAsync(
            fields,
            "brief of the visit",
            record.Visit.Id,
            $"{Addresses.Of(record.Visit.Id)}/brief",
            () => Pages.Show<BriefPage>(new { Record = record, Typed = new TypedForm(fields.Form, fields.Faults) }, StatusCodes.Status422UnprocessableEntity),
            [.. items]);
    }
}
