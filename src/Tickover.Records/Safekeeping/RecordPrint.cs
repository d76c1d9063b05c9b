using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Tickover.Records.Keeping;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Safekeeping;

/// <summary>What a record held after one of its acts: enough to say whether two databases hold the same.</summary>
/// <param name="LastAct">Number of that act.</param>
/// <param name="Acts">Acts up to it.</param>
/// <param name="Items">Items first kept up to it, by kind.</param>
/// <param name="JournalHash">SHA-256 over the journal up to it, in small hexadecimal letters.</param>
public sealed record RecordPrint(long LastAct, long Acts, IReadOnlyDictionary<string, int> Items, string JournalHash)
{
    /// <summary>Items of all kinds.</summary>
    public int AllItems => Items.Values.Sum();

    /// <summary>Whether another print is of the same record at the same act.</summary>
    /// <param name="other">The other.</param>
    /// <returns>Whether everything agrees.</returns>
    public bool Matches(RecordPrint other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return LastAct == other.LastAct && Acts == other.Acts && string.Equals(JournalHash, other.JournalHash, StringComparison.Ordinal)
            && Items.Count == other.Items.Count && Items.All(i => other.Items.TryGetValue(i.Key, out var count) && count == i.Value);
    }

    /// <summary>Takes the print of a record.</summary>
    /// <param name="context">The record; other programs may go on writing to it.</param>
    /// <param name="lastAct">The act up to which is looked; null for the last one.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The print.</returns>
    internal static async Task<RecordPrint> OfAsync(RecordsContext context, long? lastAct, CancellationToken cancellation)
    {
        var last = lastAct ?? await context.Acts.MaxAsync(a => (long?)a.Number, cancellation) ?? 0;
        var items = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var kind in RecordKinds.All)
        {
            items[kind.Name] = await ItemTable.CountAsync(context, kind, last, cancellation);
        }

        return new RecordPrint(last, await context.Acts.LongCountAsync(a => a.Number <= last, cancellation), items, await HashAsync(context, last, cancellation));
    }

    // What took an act back is left out: it is written into the older act later, and the newer act says it too.
    private static async Task<string> HashAsync(RecordsContext context, long last, CancellationToken cancellation)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        await foreach (var act in context.Acts.AsNoTracking().Where(a => a.Number <= last).OrderBy(a => a.Number).AsAsyncEnumerable().WithCancellation(cancellation))
        {
            Append(hash, string.Create(CultureInfo.InvariantCulture, $"{act.Number} {act.Key:N} {act.Kind} {act.At.ToUnixTimeMilliseconds()} {act.Undoes} {act.Person} {act.Visit} {act.Device} {act.Words}"));
        }

        await foreach (var change in context.Changes.AsNoTracking().Where(c => c.Act <= last).OrderBy(c => c.Act).ThenBy(c => c.Ordinal).AsAsyncEnumerable().WithCancellation(cancellation))
        {
            Append(hash, string.Create(CultureInfo.InvariantCulture, $"{change.Act} {change.Ordinal} {change.Kind} {change.Item:N} {change.Version}"));
            Append(hash, change.Before ?? "");
            Append(hash, change.After);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    // The length first: "ab" and "c" must not look like "a" and "bc".
    private static void Append(IncrementalHash hash, string text)
    {
        hash.AppendData(BitConverter.GetBytes(text.Length));
        hash.AppendData(Encoding.UTF8.GetBytes(text));
    }
}
