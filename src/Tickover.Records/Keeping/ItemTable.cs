using System.Collections.Concurrent;
using System.Reflection;
using Microsoft.EntityFrameworkCore;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Keeping;

/// <summary>Reaches the table of a kind that is only known while running.</summary>
internal static class ItemTable
{
    private static readonly ConcurrentDictionary<(string Method, Type Kind), MethodInfo> Methods = new();

    /// <summary>One item, to be changed.</summary>
    public static Task<RecordItem?> FindAsync(RecordsContext context, Type kind, Guid key, CancellationToken cancellation) =>
        (Task<RecordItem?>)Generic(nameof(FindOfAsync), kind).Invoke(null, [context, key, cancellation])!;

    /// <summary>How many items of a kind were kept up to an act.</summary>
    public static Task<int> CountAsync(RecordsContext context, Type kind, long lastAct, CancellationToken cancellation) =>
        (Task<int>)Generic(nameof(CountOfAsync), kind).Invoke(null, [context, lastAct, cancellation])!;

    /// <summary>All items of a kind in the order they were kept.</summary>
    public static Task<IReadOnlyList<RecordItem>> AllAsync(RecordsContext context, Type kind, CancellationToken cancellation) =>
        (Task<IReadOnlyList<RecordItem>>)Generic(nameof(AllOfAsync), kind).Invoke(null, [context, cancellation])!;

    private static MethodInfo Generic(string method, Type kind) =>
        Methods.GetOrAdd((method, kind), key => typeof(ItemTable).GetMethod(key.Method, BindingFlags.Static | BindingFlags.NonPublic)!.MakeGenericMethod(key.Kind));

    private static Task<int> CountOfAsync<T>(RecordsContext context, long lastAct, CancellationToken cancellation)
        where T : RecordItem<T> => context.Set<T>().CountAsync(i => i.Kept <= lastAct, cancellation);

    private static async Task<IReadOnlyList<RecordItem>> AllOfAsync<T>(RecordsContext context, CancellationToken cancellation)
        where T : RecordItem<T> => await context.Set<T>().AsNoTracking().OrderBy(i => i.Kept).ThenBy(i => i.Id).ToListAsync(cancellation);

    private static async Task<RecordItem?> FindOfAsync<T>(RecordsContext context, Guid key, CancellationToken cancellation)
        where T : RecordItem<T> => await context.Set<T>().FindAsync([new Id<T>(key)], cancellation);
}
