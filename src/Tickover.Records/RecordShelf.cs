using Microsoft.EntityFrameworkCore;
using Tickover.Records.Model;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Visits;

namespace Tickover.Records;

/// <summary>The cars' documents on the record: each save is a description of its own, so nothing written is ever lost.</summary>
/// <remarks>Going back strikes the latest description out, and a car taken off is marked so; both stand in the journal and can be put back.</remarks>
/// <param name="store">The open record.</param>
public sealed class RecordShelf(RecordStore store) : ICarShelf
{
    /// <summary>The device under which the shelf's acts stand in the journal.</summary>
    public const string Device = "cars";

    private const string OnThePage = "changed on the page";

    // The port is synchronous, and a save reads before it writes: two at once would both make the same car.
    private readonly Lock _lock = new();

    /// <inheritdoc/>
    public IReadOnlyList<ShelvedCar> List()
    {
        var all = Wait(store.ReadAsync(async context =>
        {
            var cars = await context.Set<CustomerCar>().AsNoTracking().Where(c => !c.Removed).ToListAsync();
            var standing = (await Standing(context).ToListAsync()).ToLookup(d => d.Car);
            var shelved = cars.Select(c => (c.Slug, Versions: InOrder(standing[c.Id]))).Where(c => c.Versions.Count > 0).ToList();
            var latest = shelved.Select(c => c.Versions[^1].Id).ToList();
            var texts = await context.Set<CarDescription>().AsNoTracking().Where(d => latest.Contains(d.Id)).ToDictionaryAsync(d => d.Id, d => d.Document);
            return shelved.ConvertAll(c => (c.Slug, Document: texts[c.Versions[^1].Id], Earlier: c.Versions.Count - 1));
        }));
        return [.. all.Where(c => CarId.Read(c.Slug) is not null).Select(c => Shelved(CarId.Read(c.Slug)!, c.Document, c.Earlier)).OrderBy(c => c.Id.Text, StringComparer.Ordinal)];
    }

    /// <inheritdoc/>
    public ShelvedCar? Read(CarId id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return Find(id) is { Removed: false } car && Versions(car) is [.., var latest] versions
            ? Shelved(id, latest.Document, versions.Count - 1)
            : null;
    }

    /// <inheritdoc/>
    /// <exception cref="RecordTroubleException">The record cannot be written, or refuses the text; nothing was kept.</exception>
    public void Save(CarId id, string document)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(document);
        lock (_lock)
        {
            var car = Find(id);
            var name = car?.Name ?? CarDocument.Read(document).Car?.Name ?? id.Text;
            List<RecordItem> items = [];
            if (car is null)
            {
                car = new CustomerCar { Slug = id.Text, Name = name };
                items.Add(car);
            }
            else if (car.Removed)
            {
                items.Add(car with { Removed = false });
            }

            var latest = Versions(car) is [.., var last] ? last.Since : DateOnly.MinValue;
            var today = DateOnly.FromDateTime(store.Clock.GetLocalNow().DateTime);

            // Where the clock was set back, what is saved now is still the latest.
            items.Add(new CarDescription { Car = car.Id, Since = today < latest ? latest : today, Document = document, Reason = OnThePage });
            Keep($"{name}: description saved", items);
        }
    }

    /// <inheritdoc/>
    public bool Undo(CarId id)
    {
        ArgumentNullException.ThrowIfNull(id);
        lock (_lock)
        {
            if (Find(id) is not { } car)
            {
                return false;
            }

            if (car.Removed)
            {
                Keep($"{car.Name}: put back", [car with { Removed = false }]);
                return true;
            }

            if (Versions(car) is not { Count: > 1 } versions)
            {
                return false;
            }

            Keep($"{car.Name}: went back to the description before", [versions[^1] with { Removed = true }]);
            return true;
        }
    }

    /// <inheritdoc/>
    public bool Remove(CarId id)
    {
        ArgumentNullException.ThrowIfNull(id);
        lock (_lock)
        {
            if (Find(id) is not { Removed: false } car || Versions(car).Count == 0)
            {
                return false;
            }

            Keep($"{car.Name}: taken off", [car with { Removed = true }]);
            return true;
        }
    }

    private static ShelvedCar Shelved(CarId id, string document, int earlier) => document.Length > ICarShelf.LongestDocument
        ? new(id, "", new CarReading(null, [new Fault("", "The document is longer than 1 MB.", "a car document of some twenty lines", "Take out what is not part of the car's description.")], []), earlier)
        : new(id, document, CarDocument.Read(document), earlier);

    private static IQueryable<DescriptionRow> Standing(RecordsContext context) =>
        context.Set<CarDescription>().AsNoTracking().Where(d => !d.Removed).Select(d => new DescriptionRow(d.Id, d.Car, d.Since, d.Kept));

    private static List<DescriptionRow> InOrder(IEnumerable<DescriptionRow> rows) => [.. rows.OrderBy(d => d.Since).ThenBy(d => d.Kept)];

    // No synchronisation context on a server or a command line, so waiting cannot lock up.
    private static T Wait<T>(Task<T> task) => task.GetAwaiter().GetResult();

    private CustomerCar? Find(CarId id) => Wait(store.ReadAsync(context => context.Set<CustomerCar>().AsNoTracking().FirstOrDefaultAsync(c => c.Slug == id.Text)));

    private List<CarDescription> Versions(CustomerCar car) => Wait(store.ReadAsync(context =>
        context.Set<CarDescription>().AsNoTracking().Where(d => d.Car == car.Id && !d.Removed).OrderBy(d => d.Since).ThenBy(d => d.Kept).ToListAsync()));

    private void Keep(string words, IReadOnlyList<RecordItem> items)
    {
        var outcome = Wait(store.KeepAsync(new Act { Key = Guid.NewGuid(), Items = items, Words = words, Device = Device }));
        if (!outcome.IsKept)
        {
            throw new RecordTroubleException(outcome.Words);
        }
    }

    private sealed record DescriptionRow(Id<CarDescription> Id, Id<CustomerCar> Car, DateOnly Since, long Kept);
}
