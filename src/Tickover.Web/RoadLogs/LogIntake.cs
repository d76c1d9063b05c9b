using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Logs;
using Tickover.Workshop.Visits;

namespace Tickover.Web.RoadLogs;

/// <summary>Takes a log that was dropped on a car, shows what it was taken for, and reads it again as corrected.</summary>
/// <param name="book">Reads logs.</param>
/// <param name="hand">Keeps the files dropped last.</param>
public sealed class LogIntake(ILogBook book, LogsInHand hand)
{
    private const int LongestName = 120;

    /// <summary>Reads the log and keeps its points with the car as it is described now; a log that cannot be used changes nothing, and says why.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="fields">The form with the file.</param>
    /// <param name="desk">The desk.</param>
    /// <returns>The answer to the form.</returns>
    public async Task<IResult> KeepAsync(VisitRecord record, FormFields fields, VisitDesk desk)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(fields);
        ArgumentNullException.ThrowIfNull(desk);
        if (fields.Form.Files.GetFile("file") is not { } file)
        {
            return desk.Refuse("Choose the file first.", RoadLogEndpoints.Of(record));
        }

        await using var stream = file.OpenReadStream();
        var name = Path.GetFileName(file.FileName);
        var log = await hand.TakeAsync(record.Visit.Id, fields.NewId<RoadRun>(), name.Length <= LongestName ? name : name[..LongestName], fields.Day("on", "Taken on") ?? desk.Today, stream);
        var layouts = (await desk.Record.AllAsync<LoggerLayout>()).Where(l => !l.Removed).Select(l => l.Layout);
        return await ReadAsync(record, log, new LogHints { Layouts = [.. layouts] }, fields, desk);
    }

    /// <summary>Reads a log again as the form has corrected its columns, and remembers that for files with the same headings.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="run">Number of the run.</param>
    /// <param name="fields">The form.</param>
    /// <param name="desk">The desk.</param>
    /// <returns>The answer to the form.</returns>
    public async Task<IResult> CorrectAsync(VisitRecord record, string run, FormFields fields, VisitDesk desk)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(fields);
        ArgumentNullException.ThrowIfNull(desk);
        return Id.Read<RoadRun>(run) is { } id && hand.Find(record.Visit.Id, id) is { } log
            ? await ReadAsync(record, log, ColumnChoices.Hints(fields, log.Told.Sheet), fields, desk)
            : desk.Refuse("The file is no longer in hand: only what was made of it is kept. Drop it again and correct it then.", RoadLogEndpoints.Of(record));
    }

    /// <summary>The page of a log that is in hand or in the record.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="run">Number of the run.</param>
    /// <returns>The page.</returns>
    public IResult Show(VisitRecord record, string run)
    {
        ArgumentNullException.ThrowIfNull(record);
        var id = Id.Read<RoadRun>(run);
        var log = id is { } known ? hand.Find(record.Visit.Id, known) : null;
        var kept = record.Runs.FirstOrDefault(r => r.Id == id);
        return log is null && kept is null
            ? Pages.NotFound("No such road log here.", "It may have been taken off. Look among the road logs of the visit.")
            : Page(record, log, kept, 200);
    }

    private async Task<IResult> ReadAsync(VisitRecord record, LogInHand log, LogHints hints, FormFields fields, VisitDesk desk)
    {
        var back = RoadLogEndpoints.Of(record);
        if (fields.Problems.Count > 0)
        {
            return desk.Refuse(string.Join(" ", fields.Problems), back);
        }

        // A log read again belongs to the jets that were in when it was taken, whatever was fitted since.
        var kept = record.Runs.FirstOrDefault(r => r.Id == log.Id);
        if ((kept is null ? JetDesk.CarOf(record) : CarDocument.Read(kept.Document).Car) is not { } car)
        {
            return desk.Refuse("The car has no description that can be read, so the log has nothing to be held against. Write the description first.", back);
        }

        await using var stream = File.OpenRead(log.File);
        var told = await Task.Run(() => book.Read(stream, log.Name, car, hints, CancellationToken.None));
        log = log with { Told = told };
        hand.Keep(log);
        if (told.Refusals.Count > 0)
        {
            return desk.AsksForJson ? desk.Refuse(string.Join(" ", told.Refusals), back) : Page(record, log, kept, StatusCodes.Status422UnprocessableEntity);
        }

        var run = (kept ?? new RoadRun { Id = log.Id, Visit = record.Visit.Id, Name = log.Name, On = log.On }) with
        {
            Version = fields.Version,
            Document = car.Document,
            Points = told.Points,
            Told = string.Join("\n", told.Told),
            Sheet = told.Sheet,
        };
        var words = kept is null ? $"road log read: {run.Name}" : $"road log read again as corrected: {run.Name}";
        return await desk.KeepAsync(fields, words, record.Visit.Id, RoadLogEndpoints.Of(record, run.Id), [run, .. await RememberedAsync(told.Sheet, fields, desk)]);
    }

    // One layout for a row of headings; what was taken back is forgotten.
    private static async Task<IReadOnlyList<RecordItem>> RememberedAsync(LogSheet sheet, FormFields fields, VisitDesk desk)
    {
        if (!fields.Ticked("remember") || sheet.LayoutKey.Length == 0)
        {
            return [];
        }

        var id = LoggerLayout.IdFor(sheet.LayoutKey);
        var known = await desk.Record.FindAsync(id);
        return sheet.Layout.Length > 0 ? [(known ?? new LoggerLayout { Id = id, Headings = sheet.LayoutKey }) with { Layout = sheet.Layout, Removed = false }]
            : known is { Removed: false } ? [known with { Removed = true }]
            : [];
    }

    private IResult Page(VisitRecord record, LogInHand? log, RoadRun? kept, int status) =>
        Pages.Show<LogPage>(new { Record = record, Log = log, Run = kept, Meanings = book.Meanings() }, status);
}
