namespace Tickover.Workshop.Visits;

/// <summary>The workshop's record: everything that was measured, found, done and signed.</summary>
/// <remarks>Safe for several threads. What was kept is on the disk when a call returns.</remarks>
public interface IRecord
{
    /// <summary>Keeps an act whole or not at all, once for each key.</summary>
    /// <param name="act">What was done.</param>
    /// <param name="cancellation">Stops the wait; an act under way is still kept whole or not at all.</param>
    /// <returns>How it ended.</returns>
    Task<ActOutcome> KeepAsync(Act act, CancellationToken cancellation = default);

    /// <summary>Takes back the last act of a device that still stands.</summary>
    /// <param name="wish">Whose and where.</param>
    /// <param name="cancellation">Stops the wait.</param>
    /// <returns>How it ended; the words say what was taken back.</returns>
    Task<ActOutcome> UndoAsync(StepBack wish, CancellationToken cancellation = default);

    /// <summary>Does again what was last taken back, unless something new was done since.</summary>
    /// <param name="wish">Whose and where.</param>
    /// <param name="cancellation">Stops the wait.</param>
    /// <returns>How it ended; the words say what was done again.</returns>
    Task<ActOutcome> RedoAsync(StepBack wish, CancellationToken cancellation = default);

    /// <summary>The workshop with its people and instruments.</summary>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The workshop; a nameless one where nothing is kept yet.</returns>
    Task<WorkshopRecord> WorkshopAsync(CancellationToken cancellation = default);

    /// <summary>Every open visit.</summary>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The visits, oldest first.</returns>
    Task<IReadOnlyList<VisitRecord>> OpenVisitsAsync(CancellationToken cancellation = default);

    /// <summary>One visit.</summary>
    /// <param name="visit">Which.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The visit, or null.</returns>
    Task<VisitRecord?> VisitAsync(Id<Visit> visit, CancellationToken cancellation = default);

    /// <summary>What a form needs to know of a visit: the visit, its car and owner, the workshop, what the car is; nothing of what was kept in it.</summary>
    /// <param name="visit">Which.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The visit, or null.</returns>
    Task<VisitRecord?> VisitHeadAsync(Id<Visit> visit, CancellationToken cancellation = default);

    /// <summary>A car over the years.</summary>
    /// <param name="car">Which.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The car, or null.</returns>
    Task<CarHistory?> CarAsync(Id<CustomerCar> car, CancellationToken cancellation = default);

    /// <summary>All items of a kind, in the order they were kept, those taken off among them.</summary>
    /// <typeparam name="T">The kind.</typeparam>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The items.</returns>
    Task<IReadOnlyList<T>> AllAsync<T>(CancellationToken cancellation = default)
        where T : RecordItem<T>;

    /// <summary>One item.</summary>
    /// <typeparam name="T">Its kind.</typeparam>
    /// <param name="id">Which.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The item, also where it was taken off; null where there never was one.</returns>
    Task<T?> FindAsync<T>(Id<T> id, CancellationToken cancellation = default)
        where T : RecordItem<T>;

    /// <summary>Looks for words in cars, owners, visits, findings, notes, parts and photographs.</summary>
    /// <param name="words">Words; each of them has to be found. Case does not count.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>What was found, the latest first, at most a hundred.</returns>
    Task<IReadOnlyList<FoundItem>> SearchAsync(string words, CancellationToken cancellation = default);

    /// <summary>The journal.</summary>
    /// <param name="visit">Only acts of this visit; null for all.</param>
    /// <param name="count">How many at most.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The acts, the latest first.</returns>
    Task<IReadOnlyList<JournalLine>> JournalAsync(Id<Visit>? visit, int count, CancellationToken cancellation = default);

    /// <summary>Which record this is and how much is in it.</summary>
    /// <param name="cancellation">Stops the counting.</param>
    /// <returns>The size.</returns>
    Task<RecordSize> SizeAsync(CancellationToken cancellation = default);
}
