using Microsoft.EntityFrameworkCore;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Keeping;

/// <summary>Writes one act into an open transaction: works out each item's new state, stamps it, and notes it in the journal.</summary>
/// <param name="context">The open record.</param>
/// <param name="row">The act's row in the journal.</param>
internal sealed class ActWriter(RecordsContext context, ActRow row)
{
    private readonly List<Clash> _clashes = [];
    private int _ordinal;

    /// <summary>Fields that clashed; while there are any nothing may be committed.</summary>
    public IReadOnlyList<Clash> Clashes => _clashes;

    /// <summary>Brings one item to the state asked for.</summary>
    /// <param name="asked">The item as it should be; its version says what was looked at.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>Null, or why not.</returns>
    public async Task<string?> PutAsync(RecordItem asked, CancellationToken cancellation)
    {
        var current = await ItemTable.FindAsync(context, asked.GetType(), asked.Key, cancellation);
        if (current is null)
        {
            return asked.Version == 0
                ? await AddAsync(asked, cancellation)
                : $"This {Words(asked)} is not in the record. Load the page again.";
        }

        if (asked.Version == 0)
        {
            return await ChangeAsync(null, current, asked, cancellation);
        }

        var was = asked.Version == current.Version ? current : await BaseAsync(asked, cancellation);
        return was is null
            ? $"This {Words(asked)} was changed from a version the record does not know. Load the page again."
            : await ChangeAsync(was, current, asked, cancellation);
    }

    /// <summary>Brings an item from what an act made of it back to what it was, leaving what others changed since.</summary>
    /// <param name="change">What the act did.</param>
    /// <param name="back">Whether to go back or, after going back, forth again.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>Null, or why not.</returns>
    public async Task<string?> TurnAsync(ChangeRow change, Turn back, CancellationToken cancellation)
    {
        var after = RecordKinds.Read(change.Kind, change.After);
        var before = change.Before is null ? after with { Removed = true } : RecordKinds.Read(change.Kind, change.Before);
        var (was, asked) = back == Turn.Back ? (after, before) : (before, after);
        var current = await ItemTable.FindAsync(context, asked.GetType(), asked.Key, cancellation);
        return current is null
            ? "The record no longer holds what was changed then."
            : await ChangeAsync(was, current, asked, cancellation);
    }

    private static string Words(RecordItem item) => RecordKinds.NameOf(item).ToLowerInvariant();

    private async Task<string?> AddAsync(RecordItem asked, CancellationToken cancellation)
    {
        var stamped = asked with { Version = 1, Kept = row.Number, Changed = row.Number, KeptAt = row.At, KeptBy = row.Person };
        if (stamped is Visit { Number: 0 } visit)
        {
            var last = await context.Set<Visit>().MaxAsync(v => (int?)v.Number, cancellation) ?? 0;
            stamped = visit with { Number = last + 1 };
        }

        context.Add(stamped);
        await NoteAsync(null, stamped, cancellation);
        return null;
    }

    private async Task<string?> ChangeAsync(RecordItem? was, RecordItem current, RecordItem asked, CancellationToken cancellation)
    {
        var clashes = new List<(string Field, string Was, string Theirs, string Yours)>();
        var merged = ItemMerge.Of(was, current, asked, clashes);
        if (clashes.Count > 0)
        {
            await ClashAsync(current, clashes, cancellation);
            return null;
        }

        var stamped = merged with { Version = current.Version + 1, Changed = row.Number };
        if (current is IAppendOnly && !Same(stamped with { Removed = false }, current with { Removed = false, Version = stamped.Version, Changed = row.Number }))
        {
            return $"A {Words(current)} is a fact and is not changed. Strike it out and keep a new one.";
        }

        // Copied first: the values are set into the very object that was read.
        var before = current with { };
        context.Entry(current).CurrentValues.SetValues(stamped);
        await NoteAsync(before, stamped, cancellation);
        return null;
    }

    private static bool Same(RecordItem a, RecordItem b) => string.Equals(RecordKinds.Write(a), RecordKinds.Write(b), StringComparison.Ordinal);

    // The version looked at, where it is not the latest.
    private async Task<RecordItem?> BaseAsync(RecordItem asked, CancellationToken cancellation)
    {
        var json = await context.Changes
            .Where(c => c.Item == asked.Key && c.Version == asked.Version)
            .Select(c => c.After)
            .FirstOrDefaultAsync(cancellation);
        return json is null ? null : RecordKinds.Read(RecordKinds.NameOf(asked), json);
    }

    private async Task ClashAsync(RecordItem current, List<(string Field, string Was, string Theirs, string Yours)> clashes, CancellationToken cancellation)
    {
        var last = await context.Acts.FirstOrDefaultAsync(a => a.Number == current.Changed, cancellation);
        var initials = last?.Person is { } person ? (await context.Set<Person>().FirstOrDefaultAsync(p => p.Id == person, cancellation))?.Initials : null;
        foreach (var (field, was, theirs, yours) in clashes)
        {
            _clashes.Add(new Clash(RecordKinds.NameOf(current), current.Key, field, was, theirs, yours, initials ?? last?.Device ?? "", last?.At ?? row.At));
        }
    }

    private async Task NoteAsync(RecordItem? before, RecordItem after, CancellationToken cancellation)
    {
        context.Changes.Add(new ChangeRow
        {
            Act = row.Number,
            Ordinal = _ordinal++,
            Kind = RecordKinds.NameOf(after),
            Item = after.Key,
            Version = after.Version,
            Before = before is null ? null : RecordKinds.Write(before),
            After = RecordKinds.Write(after),
        });
        await SearchIndex.NoteAsync(context, after, cancellation);
    }
}
