using System.Collections.Concurrent;
using System.Reflection;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Keeping;

/// <summary>Reaches the table of a kind that is only known while running.</summary>
internal static class ItemTable
{
    private static readonly ConcurrentDictionary<Type, MethodInfo> Finders = new();

    /// <summary>One item, to be changed.</summary>
    public static Task<RecordItem?> FindAsync(RecordsContext context, Type kind, Guid key, CancellationToken cancellation)
    {
        var find = Finders.GetOrAdd(kind, type => typeof(ItemTable).GetMethod(nameof(FindOfAsync), BindingFlags.Static | BindingFlags.NonPublic)!.MakeGenericMethod(type));
        return (Task<RecordItem?>)find.Invoke(null, [context, key, cancellation])!;
    }

    private static async Task<RecordItem?> FindOfAsync<T>(RecordsContext context, Guid key, CancellationToken cancellation)
        where T : RecordItem<T> => await context.Set<T>().FindAsync([new Id<T>(key)], cancellation);
}
