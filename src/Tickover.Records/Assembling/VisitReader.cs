using System.Linq.Expressions;
using Microsoft.EntityFrameworkCore;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Assembling;

/// <summary>Puts together what belongs to a visit or a car.</summary>
internal static class VisitReader
{
    /// <summary>The workshop.</summary>
    public static async Task<WorkshopRecord> WorkshopAsync(RecordsContext context, CancellationToken cancellation) => new(
        await context.Set<House>().AsNoTracking().FirstOrDefaultAsync(h => h.Id == House.TheOne, cancellation) ?? new House { Id = House.TheOne },
        await All<Person>(context).ToListAsync(cancellation),
        await All<Instrument>(context).ToListAsync(cancellation));

    /// <summary>The visits that answer a question, whole, oldest first.</summary>
    public static async Task<IReadOnlyList<VisitRecord>> VisitsAsync(RecordsContext context, Expression<Func<Visit, bool>> which, CancellationToken cancellation)
    {
        var heads = await HeadsAsync(context, which, cancellation);
        if (heads.Count == 0)
        {
            return [];
        }

        var parts = await PartsAsync(context, [.. heads.Select(h => h.Visit.Id)], cancellation);
        return [.. heads.Select(h => parts.Of(h.Visit.Id, h))];
    }

    /// <summary>The visits that answer a question, without what was kept in them, oldest first.</summary>
    public static async Task<IReadOnlyList<VisitRecord>> HeadsAsync(RecordsContext context, Expression<Func<Visit, bool>> which, CancellationToken cancellation)
    {
        var visits = await All<Visit>(context).Where(which).ToListAsync(cancellation);
        if (visits.Count == 0)
        {
            return [];
        }

        var house = await WorkshopAsync(context, cancellation);
        var cars = visits.Select(v => v.Car).Distinct().ToList();
        var knownCars = await context.Set<CustomerCar>().AsNoTracking().Where(c => cars.Contains(c.Id)).ToDictionaryAsync(c => c.Id, cancellation);
        var owners = await context.Set<Owner>().AsNoTracking().ToDictionaryAsync(o => o.Id, cancellation);
        var descriptions = (await All<CarDescription>(context).Where(d => cars.Contains(d.Car) && !d.Removed).ToListAsync(cancellation)).ToLookup(d => d.Car);
        var sheets = await SheetsAsync(context, cars, cancellation);
        var components = (await All<Component>(context).Where(c => cars.Contains(c.Car) && !c.Removed).ToListAsync(cancellation)).ToLookup(c => c.Car);
        return [.. visits.Select(v => new VisitRecord
        {
            Visit = v,
            Car = knownCars[v.Car],
            Workshop = house,
            Owner = (v.Owner ?? knownCars[v.Car].Owner) is { } owner ? owners.GetValueOrDefault(owner) : null,
            Descriptions = InOrder(descriptions[v.Car]),
            Components = [.. components[v.Car]],
            Worksheets = [.. sheets[v.Car].Where(s => s.Visit.Id == v.Id || IsBefore(s.Visit, v)).Select(s => s.Sheet)],
        })];
    }

    /// <summary>A car over the years.</summary>
    public static async Task<CarHistory?> CarAsync(RecordsContext context, Id<CustomerCar> car, CancellationToken cancellation)
    {
        if (await context.Set<CustomerCar>().AsNoTracking().FirstOrDefaultAsync(c => c.Id == car, cancellation) is not { } known)
        {
            return null;
        }

        var visits = await VisitsAsync(context, v => v.Car == car && !v.Removed, cancellation);
        return new CarHistory(
            known,
            known.Owner is { } owner ? await context.Set<Owner>().AsNoTracking().FirstOrDefaultAsync(o => o.Id == owner, cancellation) : null,
            InOrder(await All<CarDescription>(context).Where(d => d.Car == car && !d.Removed).ToListAsync(cancellation)),
            await All<Component>(context).Where(c => c.Car == car && !c.Removed).ToListAsync(cancellation),
            [.. visits.OrderBy(v => v.Visit.ArrivedOn).ThenBy(v => v.Visit.Kept)]);
    }

    private static bool IsBefore(Visit visit, Visit other) => visit.ArrivedOn < other.ArrivedOn || (visit.ArrivedOn == other.ArrivedOn && visit.Kept < other.Kept);

    // What was measured on a car holds on its later visits too.
    private static async Task<ILookup<Id<CustomerCar>, (Worksheet Sheet, Visit Visit)>> SheetsAsync(RecordsContext context, List<Id<CustomerCar>> cars, CancellationToken cancellation)
    {
        var visits = await context.Set<Visit>().AsNoTracking().Where(v => cars.Contains(v.Car)).ToDictionaryAsync(v => v.Id, cancellation);
        var known = visits.Keys.ToList();
        var sheets = await All<Worksheet>(context).Where(s => known.Contains(s.Visit) && !s.Removed).ToListAsync(cancellation);
        return sheets.ToLookup(s => visits[s.Visit].Car, s => (s, visits[s.Visit]));
    }

    private static IReadOnlyList<CarDescription> InOrder(IEnumerable<CarDescription> descriptions) => [.. descriptions.OrderBy(d => d.Since).ThenBy(d => d.Kept)];

    private static IQueryable<T> All<T>(RecordsContext context)
        where T : RecordItem<T> => context.Set<T>().AsNoTracking().OrderBy(i => i.Kept).ThenBy(i => i.Id);

    private static async Task<VisitParts> PartsAsync(RecordsContext context, List<Id<Visit>> visits, CancellationToken cancellation) => new(
        await OfAsync<StageMark>(context, visits, cancellation),
        await OfAsync<Reading>(context, visits, cancellation),
        await OfAsync<Finding>(context, visits, cancellation),
        await OfAsync<Photograph>(context, visits, cancellation),
        await OfAsync<PartLine>(context, visits, cancellation),
        await OfAsync<TimeLine>(context, visits, cancellation),
        await OfAsync<Approval>(context, visits, cancellation),
        await OfAsync<WorkNote>(context, visits, cancellation),
        await OfAsync<SignOff>(context, visits, cancellation),
        await OfAsync<CautionSeen>(context, visits, cancellation),
        await OfAsync<Signature>(context, visits, cancellation),
        await OfAsync<RoadRun>(context, visits, cancellation),
        await OfAsync<JetFitting>(context, visits, cancellation),
        await OfAsync<ScrewTurn>(context, visits, cancellation));

    private static async Task<ILookup<Id<Visit>, T>> OfAsync<T>(RecordsContext context, List<Id<Visit>> visits, CancellationToken cancellation)
        where T : RecordItem<T>, IOfVisit
    {
        var items = await All<T>(context).Where(i => visits.Contains(EF.Property<Id<Visit>>(i, nameof(IOfVisit.Visit)))).ToListAsync(cancellation);
        return items.ToLookup(i => i.Visit);
    }
}
