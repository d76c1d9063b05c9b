using System.Globalization;
using Tickover.Web.Frame;
using Tickover.Web.Lan;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Visits;

/// <summary>What every page of a visit needs: the visit itself, the day, who is at work here, and a way to keep what was entered.</summary>
/// <param name="record">The workshop's record.</param>
/// <param name="device">What the request comes from.</param>
/// <param name="options">The clock.</param>
/// <param name="accessor">The request.</param>
public sealed class VisitDesk(IRecord record, IDeviceContext device, WebAppOptions options, IHttpContextAccessor accessor)
{
    /// <summary>The record.</summary>
    public IRecord Record => record;

    /// <summary>Now.</summary>
    public DateTimeOffset Now => options.Clock.GetUtcNow();

    /// <summary>Today by the workshop's own calendar.</summary>
    public DateOnly Today => DateOnly.FromDateTime(options.Clock.GetLocalNow().DateTime);

    /// <summary>Name of the tablet or machine in hand.</summary>
    public string Device => device.Device.Name;

    /// <summary>Who is at work on this tablet, as chosen at the foot of the page; null where nobody was chosen.</summary>
    public Id<Person>? Person => Workshop.Visits.Id.Read<Person>(Request.Cookies[WhoEndpoints.Cookie]);

    private HttpRequest Request => accessor.HttpContext!.Request;

    private CancellationToken Cancellation => accessor.HttpContext!.RequestAborted;

    /// <summary>Runs a page on a visit.</summary>
    public async Task<IResult> OnVisitAsync(string id, Func<VisitRecord, Task<IResult>> page)
    {
        var visit = Workshop.Visits.Id.Read<Visit>(id) is { } known ? await record.VisitAsync(known, Cancellation) : null;
        return visit is null || visit.Visit.Removed
            ? NoVisit()
            : await page(visit);
    }

    /// <summary>Runs a page on a visit that needs nothing more from the record.</summary>
    public Task<IResult> OnVisitAsync(string id, Func<VisitRecord, IResult> page) => OnVisitAsync(id, visit => Task.FromResult(page(visit)));

    /// <summary>Runs what a form asks for on a visit where the form needs nothing of what was kept before, such as a reading.</summary>
    public async Task<IResult> OnNewEntryAsync(string id, Func<VisitRecord, FormFields, Task<IResult>> entry)
    {
        var visit = Workshop.Visits.Id.Read<Visit>(id) is { } known ? await record.VisitHeadAsync(known, Cancellation) : null;
        return visit is null || visit.Visit.Removed ? NoVisit() : await entry(visit, new FormFields(await Request.ReadFormAsync(Cancellation)));
    }

    /// <summary>Runs what a form asks for on a visit.</summary>
    public Task<IResult> OnFormAsync(string id, Func<VisitRecord, FormFields, Task<IResult>> entry) =>
        OnVisitAsync(id, async visit => await entry(visit, new FormFields(await Request.ReadFormAsync(Cancellation))));

    /// <summary>Runs what a form outside of a visit asks for.</summary>
    public async Task<IResult> OnFormAsync(Func<FormFields, Task<IResult>> entry) => await entry(new FormFields(await Request.ReadFormAsync(Cancellation)));

    /// <summary>Whether a script asks, which is answered with what came of it and not with a page.</summary>
    public bool AsksForJson => Request.Headers.Accept.ToString().Contains("application/json", StringComparison.Ordinal);

    /// <summary>Keeps what was entered; where something could not be read, shows the page again with what was typed.</summary>
    public Task<IResult> KeepOrShowAsync(FormFields fields, string words, Id<Visit>? visit, string back, Func<IResult> again, params RecordItem[] items) =>
        fields.Problems.Count > 0 && !AsksForJson ? Task.FromResult(again()) : KeepAsync(fields, words, visit, back, items);

    /// <summary>Keeps what was entered and answers: to a script with what came of it, to a form by going back to the page.</summary>
    /// <param name="fields">The form; its key makes the entry one entry however often it is sent.</param>
    /// <param name="words">What was entered, in words Undo can repeat.</param>
    /// <param name="visit">The visit; null for the workshop's own things.</param>
    /// <param name="back">Page to go back to.</param>
    /// <param name="items">The items.</param>
    public async Task<IResult> KeepAsync(FormFields fields, string words, Id<Visit>? visit, string back, params RecordItem[] items)
    {
        if (fields.Problems.Count > 0)
        {
            return Answer(new ActOutcome(ActEnding.Refused, 0, string.Join(" ", fields.Problems), []), back);
        }

        var act = new Act { Key = fields.Key, Items = items, Words = words, Visit = visit, Person = Person, Device = Device };
        return await KeepAsync(act, back);
    }

    /// <summary>Keeps an act made elsewhere and answers.</summary>
    public async Task<IResult> KeepAsync(Act act, string back) => Answer(await record.KeepAsync(act, Cancellation), back);

    /// <summary>Steps back or forth and answers.</summary>
    public async Task<IResult> StepAsync(FormFields fields, Id<Visit>? visit, string back, Func<StepBack, CancellationToken, Task<ActOutcome>> step) =>
        Answer(await step(new StepBack { Key = fields.Key, Device = Device, Visit = visit, Person = Person }, Cancellation), back);

    /// <summary>Refuses in words.</summary>
    public IResult Refuse(string words, string back) => Answer(new ActOutcome(ActEnding.Refused, 0, words, []), back);

    private static IResult NoVisit() => Pages.NotFound("No such visit here.", "It may have been taken off. Look among the cars in the shop, or find it by its car.");

    private static int Status(ActEnding ending) => ending switch
    {
        ActEnding.Clashed => StatusCodes.Status409Conflict,
        ActEnding.Refused => StatusCodes.Status422UnprocessableEntity,
        _ => StatusCodes.Status200OK,
    };

    private IResult Answer(ActOutcome outcome, string back)
    {
        if (AsksForJson)
        {
            return Results.Json(KeptAnswer.Of(outcome, back), statusCode: Status(outcome.Ending));
        }

        if (outcome.Ending == ActEnding.Clashed)
        {
            return Pages.Show<ClashPage>(new { Outcome = outcome, BackTo = back }, Status(outcome.Ending));
        }

        if (outcome.Ending == ActEnding.Refused)
        {
            return Pages.Error(Status(outcome.Ending), "This was not kept.", [outcome.Words, "Go back one page: what you typed is still there."], back, "Back");
        }

        Notice.Leave(accessor.HttpContext!, outcome.Ending is ActEnding.Kept or ActEnding.KeptBefore && !outcome.Words.StartsWith("Undone", StringComparison.Ordinal) && !outcome.Words.StartsWith("Done again", StringComparison.Ordinal)
            ? string.Create(CultureInfo.InvariantCulture, $"Kept: {outcome.Words}.")
            : outcome.Words);
        return Results.Redirect(back);
    }
}
