using Microsoft.EntityFrameworkCore;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Opening;

/// <summary>Opens a record: only one that is known, whole and not newer than this program; never an empty one where one was expected.</summary>
public static class RecordOpening
{
    /// <summary>Opens, and brings an older record up to date after putting a copy aside.</summary>
    /// <param name="place">Where it lies.</param>
    /// <param name="beginning">Whether a new one may be begun where there never was one.</param>
    /// <param name="clock">The server's clock.</param>
    /// <param name="cancellation">Stops the opening.</param>
    /// <returns>The open record.</returns>
    /// <exception cref="RecordTroubleException">It cannot be opened; the message says why and what to do.</exception>
    public static async Task<RecordStore> OpenAsync(RecordPlace place, Beginning beginning, TimeProvider clock, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(clock);
        RecordHold? hold = null;
        try
        {
            // Held from before the check, so that what was checked is what is opened. A folder without a record gets no mark of ours.
            hold = place.IsFile && File.Exists(place.File) ? RecordHold.Share(place) : null;
            var note = RecordNote.Read(place);
            var contexts = ContextFactory.For(place);
            var isNew = place.IsFile
                ? await FileOpening.PrepareAsync(place, note, beginning, clock, cancellation)
                : await DatabaseOpening.PrepareAsync(place, contexts, note, beginning, clock, cancellation);
            if (!isNew)
            {
                await UpgradeAsync(place, contexts, cancellation);
            }

            var stamp = await StampAsync(place, contexts, cancellation);
            RecordNote.Check(place, note, stamp);
            hold ??= place.IsFile ? RecordHold.Share(place) : null;
            var store = new RecordStore(place, contexts, clock, hold);
            hold = null;
            return store;
        }
        catch (Exception fault) when (Trouble.IsAround(fault))
        {
            throw Trouble.Tell(fault, place.Words);
        }
        finally
        {
            hold?.Dispose();
        }
    }

    /// <summary>Refuses a record that a newer program has written.</summary>
    /// <returns>The last step of the form that the record has, and whether steps are missing.</returns>
    internal static async Task<(string Last, bool IsOlder)> RefuseNewerAsync(RecordsContext context, string words, CancellationToken cancellation)
    {
        var known = context.Database.GetMigrations().ToList();
        var applied = (await context.Database.GetAppliedMigrationsAsync(cancellation)).ToList();
        return applied.Except(known, StringComparer.Ordinal).FirstOrDefault() is { } newer
            ? throw new RecordTroubleException($"{words} was written by a newer Tickover (it knows \"{newer}\"). Install that version; this one would lose what it does not know.")
            : applied.Count == 0
            ? throw new RecordTroubleException($"{words} was begun but never finished. Nothing can be in it: move it away and start again.")
            : (applied[^1], applied.Count < known.Count);
    }

    /// <summary>Which record it is.</summary>
    internal static async Task<StampRow> StampAsync(RecordPlace place, ContextFactory contexts, CancellationToken cancellation)
    {
        await using var context = contexts.Make();
        return await context.Stamps.AsNoTracking().SingleOrDefaultAsync(cancellation)
            ?? throw new RecordTroubleException($"{place.Words} was begun but never finished. Nothing can be in it: move it away and start again.");
    }

    private static async Task UpgradeAsync(RecordPlace place, ContextFactory contexts, CancellationToken cancellation)
    {
        await using var context = contexts.Make();
        var (last, isOlder) = await RefuseNewerAsync(context, place.Words, cancellation);

        // Only when something is pending: the tool's own lock on SQLite has no time-out, and a killed upgrade leaves it behind.
        if (isOlder)
        {
            await using var alone = FolderLock.Take(place);
            if (place.IsFile)
            {
                await FileOpening.KeepCopyAsync(place, last, cancellation);
                await FileOpening.ClearStaleLockAsync(context, cancellation);
            }

            await context.Database.MigrateAsync(cancellation);
        }
    }
}
