using Tickover.Records;
using Tickover.Workshop.Visits.Advising;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Cli.Json;

/// <summary>What <c>record --json</c> prints; its form is docs/schemas/record.schema.json.</summary>
/// <param name="Where">The file or the database, without any password.</param>
/// <param name="Cars">Cars.</param>
/// <param name="Visits">Visits, open and closed.</param>
/// <param name="Readings">Readings, the struck ones among them.</param>
/// <param name="Photographs">Photographs.</param>
/// <param name="LastAct">The last act; null where nothing was kept yet.</param>
/// <param name="OpenVisits">The open visits, oldest first.</param>
internal sealed record RecordDocument(string Where, int Cars, int Visits, int Readings, int Photographs, RecordedAct? LastAct, IReadOnlyList<OpenVisitLine> OpenVisits)
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/record/1";

    /// <summary>Asks a record.</summary>
    /// <param name="store">The open record.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The document.</returns>
    public static async Task<RecordDocument> OfAsync(RecordStore store, CancellationToken cancellation)
    {
        var size = await store.SizeAsync(cancellation);
        var last = await store.JournalAsync(null, 1, cancellation);
        var visits = await store.OpenVisitsAsync(cancellation);
        return new RecordDocument(
            size.Where,
            size.Cars,
            size.Visits,
            size.Readings,
            size.Photographs,
            last is [var act] ? new RecordedAct(act.Number, act.At, act.Words) : null,
            [.. visits.Select(v => new OpenVisitLine(v.Visit.Number, v.Car.Name, Route.Next(v).Words(), v.Visit.ArrivedOn))]);
    }
}
