using Microsoft.EntityFrameworkCore;
using Tickover.Records.Keeping;
using Tickover.Records.Model;
using Tickover.Records.Opening;
using Tickover.Records.Assembling;
using Tickover.Workshop.Visits;

namespace Tickover.Records;

/// <summary>The record in a database. Opened by <see cref="RecordOpening"/>.</summary>
public sealed class RecordStore : IRecord, IDisposable
{
    private const int MostFound = 100;

    // One writer in this program; between programs the database itself lets one in at a time.
    private readonly SemaphoreSlim _writer = new(1, 1);
    private readonly ContextFactory _contexts;
    private readonly TimeProvider _clock;
    private readonly RecordHold? _hold;

    internal RecordStore(RecordPlace place, ContextFactory contexts, TimeProvider clock, RecordHold? hold)
    {
        _hold = hold;
        Place = place;
        _contexts = contexts;
        _clock = clock;
    }

    /// <summary>Where the record lies.</summary>
    public RecordPlace Place { get; }

    internal ContextFactory Contexts => _contexts;

    internal TimeProvider Clock => _clock;

    /// <inheritdoc/>
    public Task<ActOutcome> KeepAsync(Act act, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(act);
        if (act.Key == Guid.Empty || act.Items.Count == 0)
        {
            return Task.FromResult(Refused("The entry is empty. Send it from the page."));
        }

        return act.Items.Select(ItemRules.Complaint).FirstOrDefault(c => c is not null) is { } complaint
            ? Task.FromResult(Refused(complaint))
            : WriteAsync(act.Key, context => Journal.KeepAsync(context, act, _clock.GetUtcNow(), cancellation), cancellation);
    }

    /// <inheritdoc/>
    public Task<ActOutcome> UndoAsync(StepBack wish, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(wish);
        return WriteAsync(wish.Key, context => Journal.UndoAsync(context, wish, _clock.GetUtcNow(), cancellation), cancellation);
    }

    /// <inheritdoc/>
    public Task<ActOutcome> RedoAsync(StepBack wish, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(wish);
        return WriteAsync(wish.Key, context => Journal.RedoAsync(context, wish, _clock.GetUtcNow(), cancellation), cancellation);
    }

    /// <inheritdoc/>
    public Task<WorkshopRecord> WorkshopAsync(CancellationToken cancellation = default) =>
        ReadAsync(context => VisitReader.WorkshopAsync(context, cancellation));

    /// <inheritdoc/>
    public Task<IReadOnlyList<VisitRecord>> OpenVisitsAsync(CancellationToken cancellation = default) =>
        ReadAsync(context => VisitReader.VisitsAsync(context, v => v.LeftOn == null && !v.Removed, cancellation));

    /// <inheritdoc/>
    public Task<VisitRecord?> VisitAsync(Id<Visit> visit, CancellationToken cancellation = default) =>
        ReadAsync(async context => (await VisitReader.VisitsAsync(context, v => v.Id == visit, cancellation)).SingleOrDefault());

    /// <inheritdoc/>
    public Task<VisitRecord?> VisitHeadAsync(Id<Visit> visit, CancellationToken cancellation = default) =>
        ReadAsync(async context => (await VisitReader.HeadsAsync(context, v => v.Id == visit, cancellation)).SingleOrDefault());

    /// <inheritdoc/>
    public Task<CarHistory?> CarAsync(Id<CustomerCar> car, CancellationToken cancellation = default) =>
        ReadAsync(context => VisitReader.CarAsync(context, car, cancellation));

    /// <inheritdoc/>
    public Task<IReadOnlyList<T>> AllAsync<T>(CancellationToken cancellation = default)
        where T : RecordItem<T> =>
        ReadAsync<IReadOnlyList<T>>(async context => await context.Set<T>().AsNoTracking().OrderBy(i => i.Kept).ThenBy(i => i.Id).ToListAsync(cancellation));

    /// <inheritdoc/>
    public Task<T?> FindAsync<T>(Id<T> id, CancellationToken cancellation = default)
        where T : RecordItem<T> =>
        ReadAsync(context => context.Set<T>().AsNoTracking().FirstOrDefaultAsync(i => i.Id == id, cancellation));

    /// <inheritdoc/>
    public Task<IReadOnlyList<FoundItem>> SearchAsync(string words, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(words);
        var wanted = words.ToLowerInvariant().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return wanted.Length == 0
            ? Task.FromResult<IReadOnlyList<FoundItem>>([])
            : ReadAsync<IReadOnlyList<FoundItem>>(async context =>
            {
                var rows = wanted.Aggregate(context.Search.AsNoTracking(), (found, word) => found.Where(s => s.Folded.Contains(word)));
                return await rows.OrderByDescending(s => s.Changed).Take(MostFound)
                    .Select(s => new FoundItem(s.Kind, s.Key, s.Car, s.Visit, s.Text))
                    .ToListAsync(cancellation);
            });
    }

    /// <inheritdoc/>
    public Task<IReadOnlyList<JournalLine>> JournalAsync(Id<Visit>? visit, int count, CancellationToken cancellation = default) =>
        ReadAsync(context => Journal.ReadAsync(context, visit, count, cancellation));

    /// <inheritdoc/>
    public Task<RecordSize> SizeAsync(CancellationToken cancellation = default) => ReadAsync(async context => new RecordSize(
        Place.Words,
        await context.Set<CustomerCar>().CountAsync(c => !c.Removed, cancellation),
        await context.Set<Visit>().CountAsync(v => !v.Removed, cancellation),
        await context.Set<Visit>().CountAsync(v => !v.Removed && v.LeftOn == null, cancellation),
        await context.Set<Reading>().CountAsync(cancellation),
        await context.Set<Photograph>().CountAsync(p => !p.Removed, cancellation),
        await context.Acts.OrderByDescending(a => a.Number).Select(a => (DateTimeOffset?)a.At).FirstOrDefaultAsync(cancellation)));

    /// <inheritdoc/>
    public void Dispose()
    {
        // The pool keeps connections open; a closed record leaves its file to whoever wants to move it.
        _contexts.Close();
        _writer.Dispose();
        _hold?.Dispose();
    }

    /// <summary>Runs a reading operation and tells a database's trouble in plain words.</summary>
    internal async Task<T> ReadAsync<T>(Func<RecordsContext, Task<T>> read)
    {
        try
        {
            await using var context = _contexts.Make();
            return await read(context);
        }
        catch (Exception fault) when (Trouble.Is(fault))
        {
            throw Trouble.Tell(fault, Place.Words);
        }
    }

    /// <summary>Runs a writing operation inside one transaction, alone.</summary>
    internal async Task<T> WriteAloneAsync<T>(Func<RecordsContext, Task<T>> write, CancellationToken cancellation)
    {
        await _writer.WaitAsync(cancellation);
        try
        {
            await using var context = _contexts.Make();
            return await write(context);
        }
        catch (Exception fault) when (Trouble.Is(fault))
        {
            throw Trouble.Tell(fault, Place.Words);
        }
        finally
        {
            _writer.Release();
        }
    }

    private static async Task<string?> SaveAsync(RecordsContext context)
    {
        try
        {
            await context.SaveChangesAsync(CancellationToken.None);
            return null;
        }
        catch (DbUpdateException fault) when (Trouble.Contradiction(fault) is { } words)
        {
            return words;
        }
    }

    private static ActOutcome Refused(string words) => new(ActEnding.Refused, 0, words, []);

    private Task<ActOutcome> WriteAsync(Guid key, Func<RecordsContext, Task<ActOutcome>> write, CancellationToken cancellation) => WriteAloneAsync(
        async context =>
        {
            await using var transaction = await context.Database.BeginTransactionAsync(cancellation);
            await Journal.LockAsync(context, cancellation);
            if (await Journal.BeforeAsync(context, key, cancellation) is { } before)
            {
                return before;
            }

            var outcome = await write(context);
            if (outcome.Ending == ActEnding.Kept)
            {
                // From here on the act is kept whole even if the sender has gone: cancelling a commit half-way tells nobody anything.
                if (await SaveAsync(context) is { } refusal)
                {
                    return Refused(refusal);
                }

                await transaction.CommitAsync(CancellationToken.None);
            }

            return outcome;
        },
        cancellation);
}
