using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Papers;

/// <summary>Parts, time, questions to the owner and numbered components of a visit.</summary>
internal static class PaperEndpoints
{
    private const int MinutesPerHour = 60;
    private const int MinutesPerDay = 24 * MinutesPerHour;

    public static void MapPaper(this IEndpointRouteBuilder routes)
    {
        var visit = routes.MapGroup("/visits/{id}");
        visit.MapGet("/papers", (string id, VisitDesk desk) => desk.OnVisitAsync(id, record => Show(record, desk)));
        Map(visit, "parts", Part, r => r.Parts, p => p.What);
        Map(visit, "times", Time, r => r.Times, t => t.What);
        Map(visit, "approvals", Approval, r => r.Approvals, a => a.Asked);
        Map(visit, "components", Component, r => r.Components, c => c.What);
    }

    private static void Map<T>(
        RouteGroupBuilder visit, string kind, Func<VisitRecord, FormFields, VisitDesk, T, T> read, Func<VisitRecord, IReadOnlyList<T>> of, Func<T, string> words)
        where T : RecordItem<T>, new()
    {
        var anchor = kind is "times" ? "time" : kind;
        visit.MapPost($"/{kind}", (string id, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) =>
        {
            var number = fields.NewId<T>();
            var known = of(record).FirstOrDefault(i => i.Id == number) ?? new T { Id = number };
            var asked = read(record, fields, desk, known) with { Version = fields.Version };
            return desk.KeepOrShowAsync(
                fields,
                words(asked).Length > 0 ? $"{anchor}: {words(asked)}" : anchor,
                record.Visit.Id,
                Back(record, anchor),
                () => Show(record, desk, new TypedForm(fields.Form, fields.Faults, $"{Addresses.Of(record.Visit.Id)}/{kind}")),
                asked);
        })).GuardForm();
        visit.MapPost($"/{kind}/remove", (string id, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) =>
            of(record).FirstOrDefault(i => i.Id == fields.Named<T>("id")) is { } known
                ? desk.KeepAsync(fields, $"{anchor} taken off: {words(known)}", record.Visit.Id, Back(record, anchor), known with { Version = fields.Version, Removed = true })
                : Task.FromResult(desk.Refuse("That line is not in the record. Load the page again.", Back(record, anchor))))).GuardForm();
    }

    private static string Back(VisitRecord record, string anchor) => $"{Addresses.Of(record.Visit.Id)}/papers#{anchor}";

    private static IResult Show(VisitRecord record, VisitDesk desk, TypedForm? typed = null) => Pages.Show<PapersPage>(
        new { Record = record, desk.Today, desk.Person, Typed = typed ?? TypedForm.Blank },
        typed is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static PartLine Part(VisitRecord record, FormFields fields, VisitDesk desk, PartLine part)
    {
        var state = fields.Choice("state", PartState.ToOrder);
        var ordered = fields.Day("orderedOn", "Ordered on");
        var fitted = fields.Day("fittedOn", "Fitted on");
        return part with
        {
            Visit = record.Visit.Id,
            What = fields.Needed("what", "Say what the part is."),
            Quantity = fields.Text("quantity") is { Length: > 0 } quantity ? quantity : "1",
            State = state,
            Reference = fields.Text("reference"),
            Price = BriefFields.Amount(fields, "price", "Price"),
            OrderedOn = ordered ?? (state == PartState.Ordered ? desk.Today : null),
            PromisedFor = fields.Day("promisedFor", "Promised for"),
            FittedOn = fitted ?? (state == PartState.Fitted ? desk.Today : null),
            Stage = fields.Choice("stage", Stage.Arrival),
            OldPart = fields.Text("oldPart"),
        };
    }

    private static TimeLine Time(VisitRecord record, FormFields fields, VisitDesk desk, TimeLine time)
    {
        var hours = fields.Whole("hours", "Hours") ?? 0;
        var minutes = fields.Whole("minutes", "Minutes") ?? 0;
        var all = Math.Clamp(hours, -1, MinutesPerDay) * MinutesPerHour;
        if (hours < 0 || minutes < 0 || minutes > MinutesPerDay || all + minutes is <= 0 or > MinutesPerDay)
        {
            fields.Complain("hours", "Write between 1 minute and 24 hours.");
        }

        return time with
        {
            Visit = record.Visit.Id,
            Minutes = (int)Math.Clamp((long)all + minutes, 0, MinutesPerDay),
            On = fields.Day("on", "Day") ?? desk.Today,
            Person = fields.Named<Person>("person"),
            Stage = fields.Choice("stage", Stage.Arrival),
            What = fields.Text("what"),
        };
    }

    private static Approval Approval(VisitRecord record, FormFields fields, VisitDesk desk, Approval approval)
    {
        var answer = fields.Choice("answer", ApprovalAnswer.Open);
        return approval with
        {
            Visit = record.Visit.Id,
            Asked = fields.Needed("asked", "Write down what is asked."),
            Price = BriefFields.Amount(fields, "price", "Extra price"),
            AskedOn = fields.Day("askedOn", "Asked on") ?? desk.Today,
            Finding = fields.Named<Finding>("finding"),
            Answer = answer,
            AnsweredOn = fields.Day("answeredOn", "Answered on") ?? (answer == ApprovalAnswer.Open ? null : desk.Today),
            AnswerWords = fields.Text("answerWords"),
        };
    }

    private static Component Component(VisitRecord record, FormFields fields, VisitDesk desk, Component component)
    {
        var fitted = fields.Day("fittedOn", "Fitted on");
        var off = fields.Day("takenOffOn", "Taken off on");
        if (off < fitted)
        {
            fields.Complain("takenOffOn", "Taken off on: that day is before it was fitted.");
        }

        return component with
        {
            Car = record.Car.Id,
            Kind = fields.Choice("kind", ComponentKind.Other),
            Place = fields.Text("place"),
            What = fields.Needed("what", "Say what the component is."),
            SerialNumber = fields.Text("serialNumber"),
            FittedOn = fitted,
            TakenOffOn = off,
            Note = fields.Text("note"),
        };
    }
}
