using Tickover.Workshop.Visits;

namespace Tickover.Records.Carrying;

/// <summary>What is carried from one record to another.</summary>
/// <param name="Items">Items by kind, each in the order they were kept.</param>
/// <param name="Acts">Acts in their order.</param>
internal sealed record Cargo(IReadOnlyDictionary<Type, IReadOnlyList<RecordItem>> Items, IReadOnlyList<CarriedAct> Acts)
{
    /// <summary>All items, those that others refer to first.</summary>
    public IEnumerable<RecordItem> All => RecordKinds.All.SelectMany(k => Items[k]);

    /// <summary>The items of a kind.</summary>
    public IEnumerable<T> Of<T>()
        where T : RecordItem => Items[typeof(T)].Cast<T>();
}
