using Microsoft.EntityFrameworkCore;
using Tickover.Records.Keeping;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Carrying;

/// <summary>Reads what is to be carried out of a record: everything, or one car with all that its visits refer to.</summary>
internal static class CargoReader
{
    /// <summary>Everything.</summary>
    public static async Task<Cargo> AllAsync(RecordsContext context, CancellationToken cancellation)
    {
        var items = new Dictionary<Type, IReadOnlyList<RecordItem>>();
        foreach (var kind in RecordKinds.All)
        {
            items[kind] = await ItemTable.AllAsync(context, kind, cancellation);
        }

        return new Cargo(items, await ActsAsync(context, null, cancellation));
    }

    /// <summary>One car: the workshop's own entry stays behind, since another workshop has one of its own.</summary>
    public static async Task<Cargo> CarAsync(RecordsContext context, CustomerCar car, CancellationToken cancellation)
    {
        var all = await AllAsync(context, cancellation);
        var visits = all.Of<Visit>().Where(v => v.Car == car.Id).Select(v => v.Id).ToHashSet();
        var owners = all.Of<Visit>().Where(v => v.Car == car.Id).Select(v => v.Owner).Append(car.Owner).ToHashSet();
        var own = all.All.Where(item => item switch
        {
            CustomerCar c => c.Id == car.Id,
            Visit v => v.Car == car.Id,
            CarDescription d => d.Car == car.Id,
            Component c => c.Car == car.Id,
            Owner o => owners.Contains(o.Id),
            IOfVisit part => visits.Contains(part.Visit),
            _ => false,
        }).ToList();
        var named = own.SelectMany(Named).ToHashSet();
        named.UnionWith((await ActsAsync(context, own.Select(i => i.Key).ToHashSet(), cancellation)).Select(a => a.Person).OfType<Guid>());
        var carried = all.All.Where(i => i is Person or Instrument && named.Contains(i.Key)).Concat(own).ToLookup(i => i.GetType());
        var keys = carried.SelectMany(g => g).Select(i => i.Key).ToHashSet();
        return new Cargo(RecordKinds.All.ToDictionary(k => k, k => (IReadOnlyList<RecordItem>)[.. carried[k]]), await ActsAsync(context, keys, cancellation));
    }

    // People and instruments that an item refers to.
    private static IEnumerable<Guid> Named(RecordItem item)
    {
        Guid?[] people = item switch
        {
            Reading r => [r.Instrument?.Value],
            TimeLine t => [t.Person?.Value],
            SignOff s => [s.Person.Value],
            CautionSeen c => [c.Person?.Value],
            Signature s => [s.Person.Value],
            _ => [],
        };
        return people.Append(item.KeptBy?.Value).OfType<Guid>();
    }

    private static async Task<IReadOnlyList<CarriedAct>> ActsAsync(RecordsContext context, HashSet<Guid>? items, CancellationToken cancellation)
    {
        var acts = await context.Acts.AsNoTracking().OrderBy(a => a.Number).ToListAsync(cancellation);
        var changes = (await context.Changes.AsNoTracking().ToListAsync(cancellation)).Where(c => items?.Contains(c.Item) != false).ToLookup(c => c.Act);
        return [.. acts.Where(a => items is null || changes[a.Number].Any()).Select(a => CarriedAct.Of(a, changes[a.Number]))];
    }
}
