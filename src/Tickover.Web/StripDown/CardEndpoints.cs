using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.StripDown.Cards;
using Tickover.Workshop.Visits;

namespace Tickover.Web.StripDown;

/// <summary>The cards of the carburettors, as found at Strip-down and as left at Build, and the whole set of them.</summary>
internal static class CardEndpoints
{
    public static void MapCards(this IEndpointRouteBuilder visit)
    {
        var stage = visit.MapGroup("/{stage:regex(^(strip-down|build)$)}");
        stage.MapGet("/set", (string id, string stage, VisitDesk desk) => desk.OnVisitAsync(id, record => Pages.Show<SetPage>(new { Record = record, Stage = Read(stage) })));
        stage.MapGet("/cards/{carburettor}", (string id, string stage, string carburettor, VisitDesk desk) => desk.OnVisitAsync(id, record => Show(record, Read(stage), carburettor, desk)));
        stage.MapPost("/cards/{carburettor}", (string id, string stage, string carburettor, VisitDesk desk) =>
            desk.OnNewEntryAsync(id, (record, fields) => KeepAsync(record, Read(stage), carburettor, fields, desk))).GuardForm();
    }

    private static Stage Read(string stage) => Addresses.ReadStage(stage)!.Value;

    private static IResult Show(VisitRecord record, Stage stage, string carburettor, VisitDesk desk)
    {
        var sheet = SetCards.Of(record, stage);
        return sheet.Cards.FirstOrDefault(c => string.Equals(c.Carburettor.Name, carburettor, StringComparison.OrdinalIgnoreCase)) is { } card
            ? Pages.Show<CardPage>(new { Record = record, Stage = stage, Sheet = sheet, Card = card, desk.Today })
            : Pages.NotFound("No such carburettor on this car.", "Open the set and take one of its cards.");
    }

    private static Task<IResult> KeepAsync(VisitRecord record, Stage stage, string carburettor, FormFields fields, VisitDesk desk)
    {
        var place = new Place(PlaceKind.Carburettor, carburettor);
        var entry = CardEntry.Of(record, stage, place, fields, desk.Now);
        var back = Addresses.Card(record.Visit.Id, stage, place);
        return entry.Question.Length > 0
            ? Task.FromResult(desk.Refuse($"{entry.Question} If it is right as typed, tick \"Unusual figures are right as typed\" and keep the card again.", back))
            : desk.KeepAsync(fields, entry.Words, record.Visit.Id, back, [.. entry.Readings]);
    }
}
