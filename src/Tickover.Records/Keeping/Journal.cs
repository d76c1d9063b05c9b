using Microsoft.EntityFrameworkCore;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Keeping;

/// <summary>Keeps acts in their order, takes them back and does them again. Runs inside one transaction of one writer.</summary>
internal static class Journal
{
    /// <summary>Any number will do as long as nobody else uses it: it names the lock that lets one writer in at a time.</summary>
    private const long WriterLock = 0x5469636B;

    /// <summary>Lets one writer in where the database would let in several.</summary>
    public static async Task LockAsync(RecordsContext context, CancellationToken cancellation)
    {
        // SQLite begins every writing transaction alone; PostgreSQL has to be asked.
        if (context.Database.IsNpgsql())
        {
            await context.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({WriterLock})", cancellation);
        }
    }

    /// <summary>What an earlier sending of the same key came to.</summary>
    public static async Task<ActOutcome?> BeforeAsync(RecordsContext context, Guid key, CancellationToken cancellation)
    {
        var row = await context.Acts.AsNoTracking().FirstOrDefaultAsync(a => a.Key == key, cancellation);
        return row is null ? null : new ActOutcome(ActEnding.KeptBefore, row.Number, row.Words, []);
    }

    /// <summary>Keeps an act.</summary>
    public static async Task<ActOutcome> KeepAsync(RecordsContext context, Act act, DateTimeOffset now, CancellationToken cancellation)
    {
        var row = await RowAsync(context, act.Key, ActKind.Done, act.Words, now, act.Device, act.Visit, act.Person, null, cancellation);
        var writer = new ActWriter(context, row);
        foreach (var item in act.Items)
        {
            if (await writer.PutAsync(InUtc(item), cancellation) is { } refusal)
            {
                return new ActOutcome(ActEnding.Refused, 0, refusal, []);
            }
        }

        return writer.Clashes.Count > 0 ? Clashed(writer.Clashes) : new ActOutcome(ActEnding.Kept, row.Number, row.Words, []);
    }

    /// <summary>Takes back the last act of a device that still stands.</summary>
    public static async Task<ActOutcome> UndoAsync(RecordsContext context, StepBack wish, DateTimeOffset now, CancellationToken cancellation)
    {
        var last = await OfDevice(context, wish).Where(a => a.Kind == ActKind.Done && a.UndoneBy == null).FirstOrDefaultAsync(cancellation);
        return last is null
            ? new ActOutcome(ActEnding.Nothing, 0, "Nothing to undo here.", [])
            : await TurnAsync(context, wish, now, last, Turn.Back, cancellation);
    }

    /// <summary>Does again what was last taken back, unless something new was done since.</summary>
    public static async Task<ActOutcome> RedoAsync(RecordsContext context, StepBack wish, DateTimeOffset now, CancellationToken cancellation)
    {
        var undo = await OfDevice(context, wish).Where(a => a.Kind == ActKind.Undo && a.UndoneBy == null).FirstOrDefaultAsync(cancellation);
        var newer = undo is null ? null : await OfDevice(context, wish).Where(a => a.Kind == ActKind.Done && a.UndoneBy == null && a.Number > undo.Number).FirstOrDefaultAsync(cancellation);
        if (undo is null || newer is not null)
        {
            return new ActOutcome(ActEnding.Nothing, 0, "Nothing to do again here.", []);
        }

        var taken = await context.Acts.SingleAsync(a => a.Number == undo.Undoes, cancellation);
        var outcome = await TurnAsync(context, wish, now, taken, Turn.Forth, cancellation);
        if (outcome.Ending == ActEnding.Kept)
        {
            undo.UndoneBy = outcome.Number;
            taken.UndoneBy = null;
        }

        return outcome;
    }

    /// <summary>The latest acts.</summary>
    public static async Task<IReadOnlyList<JournalLine>> ReadAsync(RecordsContext context, Id<Visit>? visit, int count, CancellationToken cancellation)
    {
        var rows = await context.Acts.AsNoTracking().Where(a => visit == null || a.Visit == visit).OrderByDescending(a => a.Number).Take(count).ToListAsync(cancellation);
        var numbers = rows.Select(a => a.Number).ToList();
        var changes = await context.Changes.AsNoTracking().Where(c => numbers.Contains(c.Act)).OrderBy(c => c.Ordinal).ToListAsync(cancellation);
        var byAct = changes.ToLookup(c => c.Act, c => new JournalChange(c.Kind, c.Item, c.Before, c.After));
        return [.. rows.Select(a => new JournalLine(a.Number, a.Words, a.At, a.Person, a.Device, a.Visit, a.Undoes, a.UndoneBy, [.. byAct[a.Number]]))];
    }

    private static IQueryable<ActRow> OfDevice(RecordsContext context, StepBack wish) =>
        context.Acts.Where(a => a.Device == wish.Device && a.Visit == wish.Visit).OrderByDescending(a => a.Number);

    private static async Task<ActOutcome> TurnAsync(RecordsContext context, StepBack wish, DateTimeOffset now, ActRow target, Turn turn, CancellationToken cancellation)
    {
        var kind = turn == Turn.Back ? ActKind.Undo : ActKind.Redo;
        var words = turn == Turn.Back ? $"Undone: {target.Words}" : $"Done again: {target.Words}";
        var row = await RowAsync(context, wish.Key, kind, words, now, wish.Device, wish.Visit, wish.Person, target.Number, cancellation);
        var writer = new ActWriter(context, row);
        var changes = await context.Changes.Where(c => c.Act == target.Number).OrderBy(c => c.Ordinal).ToListAsync(cancellation);
        if (turn == Turn.Back)
        {
            changes.Reverse();
        }

        foreach (var change in changes)
        {
            if (await writer.TurnAsync(change, turn, cancellation) is { } refusal)
            {
                return new ActOutcome(ActEnding.Refused, 0, refusal, []);
            }
        }

        if (writer.Clashes.Count > 0)
        {
            return Clashed(writer.Clashes);
        }

        if (turn == Turn.Back)
        {
            target.UndoneBy = row.Number;
        }

        return new ActOutcome(ActEnding.Kept, row.Number, words, []);
    }

    private static async Task<ActRow> RowAsync(
        RecordsContext context, Guid key, ActKind kind, string words, DateTimeOffset now, string device, Id<Visit>? visit, Id<Person>? person, long? undoes, CancellationToken cancellation)
    {
        var last = await context.Acts.MaxAsync(a => (long?)a.Number, cancellation) ?? 0;
        var row = new ActRow
        {
            Number = last + 1,
            Key = key,
            Kind = kind,
            Words = words,
            At = Whole(now),
            Device = device,
            Visit = visit,
            Person = person,
            Undoes = undoes,
        };
        context.Acts.Add(row);
        return row;
    }

    // Both kinds of database keep milliseconds and UTC alike; more would come back changed from one of them.
    private static DateTimeOffset Whole(DateTimeOffset moment) => DateTimeOffset.FromUnixTimeMilliseconds(moment.ToUnixTimeMilliseconds());

    private static RecordItem InUtc(RecordItem item) => item switch
    {
        Reading r => r with { TakenAt = Whole(r.TakenAt) },
        Visit { WaitingUntil: { } until } v => v with { WaitingUntil = Whole(until) },
        _ => item,
    };

    private static ActOutcome Clashed(IReadOnlyList<Clash> clashes)
    {
        var first = clashes[0];
        var who = first.By.Length == 0 ? "Somebody" : first.By;
        var others = clashes.Count == 1 ? "" : $" and {clashes.Count - 1} more";
        return new ActOutcome(
            ActEnding.Clashed,
            0,
            $"{who} changed the same thing meanwhile: {first.Field}{others} now reads {first.Theirs}, and here it reads {first.Yours}. Nothing was overwritten; choose which one stands.",
            clashes);
    }
}
