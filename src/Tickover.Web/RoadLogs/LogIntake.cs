using Tickover.Web.Visits;
using Tickover.Workshop.Logs;
using Tickover.Workshop.Visits;

namespace Tickover.Web.RoadLogs;

/// <summary>Takes a log that was dropped on a car.</summary>
/// <param name="book">Reads logs.</param>
public sealed class LogIntake(ILogBook book)
{
    private const int LongestName = 120;

    /// <summary>Reads the log and keeps its points with the car as it is described now; a log that cannot be used changes nothing.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="fields">The form with the file.</param>
    /// <param name="desk">The desk.</param>
    /// <returns>The answer to the form.</returns>
    public async Task<IResult> KeepAsync(VisitRecord record, FormFields fields, VisitDesk desk)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(fields);
        ArgumentNullException.ThrowIfNull(desk);
        var back = RoadLogEndpoints.Of(record);
        if (fields.Form.Files.GetFile("file") is not { Length: > 0 } file)
        {
            return desk.Refuse("Choose the file first; an empty one says nothing.", back);
        }

        if (JetDesk.CarOf(record) is not { } car)
        {
            return desk.Refuse("The car has no description that can be read, so the log has nothing to be held against. Write the description first.", back);
        }

        await using var stream = file.OpenReadStream();
        var name = Path.GetFileName(file.FileName);
        var told = await Task.Run(() => book.Read(stream, name, car, CancellationToken.None));
        if (told.Refusals.Count > 0)
        {
            return desk.Refuse(string.Join(" ", told.Refusals), back);
        }

        var run = new RoadRun
        {
            Id = fields.NewId<RoadRun>(),
            Visit = record.Visit.Id,
            Name = name.Length <= LongestName ? name : name[..LongestName],
            On = fields.Day("on", "Taken on") ?? desk.Today,
            Document = car.Document,
            Points = told.Points,
            Told = string.Join("\n", told.Told),
        };
        return await desk.KeepAsync(fields, $"road log read: {run.Name}", record.Visit.Id, back, run);
    }
}
