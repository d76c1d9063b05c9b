using Tickover.Web.Frame;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Cautions;
using Tickover.Workshop.Visits.Gates;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Web.Visits;

/// <summary>The pages of the stages: readings, notes, how far a stage has got.</summary>
internal static class StageEndpoints
{
    public static void MapStages(this IEndpointRouteBuilder visit)
    {
        visit.MapGet("/{stage:regex(^(arrival|storage|gauge|supply|strip-down|build|balance|mixture|road|hand-over)$)}", (string id, string stage, string? measure, VisitDesk desk) =>
            desk.OnVisitAsync(id, record => Show(record, stage, measure, null, desk)));
        visit.MapPost("/{stage}/state", (string id, string stage, VisitDesk desk) => OnStageAsync(id, stage, desk, StateAsync)).GuardForm();
        visit.MapPost("/{stage}/readings", (string id, string stage, VisitDesk desk) => desk.OnNewEntryAsync(id, (record, fields) => Addresses.ReadStage(stage) is { } known
            ? ReadingsAsync(record, known, fields, desk)
            : Task.FromResult(Pages.NotFound("No such stage.", "Choose one on the page of the visit.")))).GuardForm();
        visit.MapPost("/{stage}/readings/{reading}/strike", (string id, string stage, string reading, VisitDesk desk) =>
            OnStageAsync(id, stage, desk, (record, known, fields, at) => StrikeAsync(record, known, reading, fields, at))).GuardForm();
        visit.MapPost("/notes", (string id, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) => NoteAsync(record, fields, desk))).GuardForm();
        visit.MapPost("/notes/{note}/remove", (string id, string note, VisitDesk desk) => desk.OnFormAsync(id, (record, fields) => RemoveNoteAsync(record, note, fields, desk))).GuardForm();
    }

    private static IResult Show(VisitRecord record, string stage, string? measure, string? ask, VisitDesk desk) => Pages.Show<StagePage>(new
    {
        Record = record,
        Stage = Addresses.ReadStage(stage)!.Value,
        Chosen = MeasureCatalogue.Find(measure),
        desk.Person,
        desk.Today,
        Ask = ask,
    });

    private static Task<IResult> OnStageAsync(string id, string stage, VisitDesk desk, Func<VisitRecord, Stage, FormFields, VisitDesk, Task<IResult>> entry) =>
        desk.OnFormAsync(id, (record, fields) => Addresses.ReadStage(stage) is { } known
            ? entry(record, known, fields, desk)
            : Task.FromResult(Pages.NotFound("No such stage.", "Choose one on the page of the visit.")));

    private static Task<IResult> StateAsync(VisitRecord record, Stage stage, FormFields fields, VisitDesk desk)
    {
        var state = fields.Choice("state", StageState.Begun);
        var back = Addresses.Of(record.Visit.Id, stage);
        if (state == StageState.Begun)
        {
            if (StageGates.Of(stage).Select(g => GateStatus.Of(record, g, desk.Today)).FirstOrDefault(g => !g.LetsThrough) is { } shut)
            {
                return Task.FromResult(desk.Refuse($"Tap shut: {shut.Words}", Addresses.Of(record.Visit.Id, shut.Definition.Gate)));
            }

            // The first step of a stage that can hurt someone is read before anything is touched.
            if (CautionCatalogue.Of(stage).FirstOrDefault(c => record.Cautions.All(s => !string.Equals(s.Caution, c.Key, StringComparison.Ordinal))) is { } unread)
            {
                back = Addresses.Caution(record.Visit.Id, unread.Key);
            }
        }

        var mark = record.Stages.LastOrDefault(s => s.Stage == stage)
            ?? new StageMark { Id = StageMark.IdFor(record.Visit.Id, stage), Visit = record.Visit.Id, Stage = stage };
        var asked = mark with
        {
            Version = fields.Version,
            State = state,
            BegunOn = state == StageState.Begun ? mark.BegunOn ?? desk.Today : mark.BegunOn,
            EndedOn = state is StageState.Done or StageState.NotNeeded ? desk.Today : null,
        };
        return desk.KeepAsync(fields, $"{stage.Words()} {Words(state)}", record.Visit.Id, back, asked);
    }

    private static string Words(StageState state) => state switch
    {
        StageState.Begun => "begun",
        StageState.Done => "done",
        StageState.NotNeeded => "not needed",
        _ => "set back",
    };

    private static Task<IResult> ReadingsAsync(VisitRecord record, Stage stage, FormFields fields, VisitDesk desk)
    {
        if (MeasureCatalogue.Find(fields.Text("measure")) is not { } measure)
        {
            return Task.FromResult(desk.Refuse("This reading is not on the list of measures. Load the page again.", Addresses.Of(record.Visit.Id, stage)));
        }

        var entry = ReadingEntry.Of(record, stage, measure, fields, desk.Now);
        if (entry.Question.Length > 0)
        {
            return Task.FromResult(desk.Refuse($"{entry.Question} If it is right as typed, tick \"An unusual figure is right as typed\" and keep it again.", Addresses.Measure(record.Visit.Id, stage, measure.Key)));
        }

        return desk.KeepAsync(fields, entry.Words, record.Visit.Id, Addresses.Measure(record.Visit.Id, stage, measure.Key), [.. entry.Readings]);
    }

    private static Task<IResult> StrikeAsync(VisitRecord record, Stage stage, string reading, FormFields fields, VisitDesk desk)
    {
        if (record.Readings.FirstOrDefault(r => r.Id == Id.Read<Reading>(reading)) is not { } known)
        {
            return Task.FromResult(desk.Refuse("That reading is not in the record. Load the page again.", Addresses.Of(record.Visit.Id, stage)));
        }

        var words = $"{(known.Removed ? "brought back" : "struck out")}: {MeasureCatalogue.Find(known.Measure)?.Label ?? known.Measure}, {known.Place.Words().ToLowerInvariant()}, {known.Typed}";
        return desk.KeepAsync(fields, words, record.Visit.Id, Addresses.Measure(record.Visit.Id, stage, known.Measure), known with { Removed = !known.Removed });
    }

    private static Task<IResult> NoteAsync(VisitRecord record, FormFields fields, VisitDesk desk)
    {
        var note = new WorkNote
        {
            Id = fields.NewId<WorkNote>(),
            Visit = record.Visit.Id,
            Stage = fields.Choice("stage", Stage.Arrival),
            Kind = fields.Choice("kind", WorkKind.Done),
            What = fields.Needed("what", "The note is empty."),
            Why = fields.Text("why"),
            Further = fields.Text("further"),
            On = desk.Today,
        };
        return desk.KeepAsync(fields, $"note: {note.What}", record.Visit.Id, $"{Addresses.Of(record.Visit.Id, note.Stage)}#work", note);
    }

    private static Task<IResult> RemoveNoteAsync(VisitRecord record, string note, FormFields fields, VisitDesk desk) =>
        record.Notes.FirstOrDefault(n => n.Id == Id.Read<WorkNote>(note)) is { } known
            ? desk.KeepAsync(fields, $"note taken off: {known.What}", record.Visit.Id, $"{Addresses.Of(record.Visit.Id, known.Stage)}#work", known with { Version = fields.Version, Removed = true })
            : Task.FromResult(desk.Refuse("That note is not in the record.", Addresses.Of(record.Visit.Id)));
}
