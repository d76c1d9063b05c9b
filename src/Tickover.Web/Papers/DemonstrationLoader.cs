using Tickover.Instruments.Logs;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Demonstration;
using Tickover.Workshop.JetChoice;
using Tickover.Workshop.Logs;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Papers;

/// <summary>Puts the invented workshop of the demonstration into a record, and takes it off again.</summary>
public static class DemonstrationLoader
{
    private const string Ending = ".car.json";

    private static readonly string[] Names = ["tern-2800", "osprey-v8", "gannet-1500"];

    /// <summary>Whether the invented cars are at hand.</summary>
    /// <param name="samples">Folder of the sample documents.</param>
    /// <returns>True where they are.</returns>
    public static bool Has(string? samples) => Texts(samples) is not null;

    /// <summary>The invented cars with their road logs and the shelf.</summary>
    /// <param name="samples">Folder of the sample documents.</param>
    /// <returns>The documents, or null where those of the cars are not at hand; logs and shelf may be missing.</returns>
    public static DemonstrationDocuments? Documents(string? samples) => Texts(samples) is { } texts
        ? texts with
        {
            TernRoad = Run(samples, "tern-road.csv", texts.Tern2800),
            OspreyRoad = Run(samples, "osprey-road.csv", texts.OspreyV8),
            Sheets = DemonstrationWorkshop.Sheets.Select(name => (Name: name, Text: Text(samples, name))).Where(s => s.Text is not null).ToDictionary(s => s.Name, s => s.Text!, StringComparer.Ordinal),
            Shelf = Text(samples, "shelf.json") is { } shelf ? ShelfDocument.Read(shelf).Shelf : null,
        }
        : null;

    /// <summary>Loads the demonstration; where it was taken off before, brings it back as it was.</summary>
    /// <param name="record">The record.</param>
    /// <param name="documents">The documents of its cars.</param>
    /// <param name="today">All its days are counted back from this one.</param>
    /// <param name="cancellation">Stops between two acts.</param>
    /// <returns>Null, or why it could not be loaded.</returns>
    public static async Task<string?> LoadAsync(IRecord record, DemonstrationDocuments documents, DateOnly today, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(record);
        var acts = DemonstrationWorkshop.Acts(documents, today);
        if (await IsKnownAsync(record, acts, cancellation))
        {
            var (items, _) = await OfAsync(record, acts, removed: true, cancellation);
            return items.Count == 0 ? null : Refusal(await record.KeepAsync(Act(Guid.NewGuid(), "the demonstration brought back", DemonstrationWorkshop.Device, [.. items.Select(i => i with { Removed = false }), await HouseAsync(record, acts, cancellation)]), cancellation));
        }

        foreach (var act in acts)
        {
            if (Refusal(await record.KeepAsync(act, cancellation)) is { } refusal)
            {
                return refusal;
            }
        }

        return null;
    }

    /// <summary>One act that takes off everything of the demonstration and leaves the workshop nameless.</summary>
    /// <param name="record">The record.</param>
    /// <param name="documents">The documents of its cars.</param>
    /// <param name="key">Key of the act.</param>
    /// <param name="device">The tablet it is done on.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The act.</returns>
    public static async Task<Act> RemovalAsync(IRecord record, DemonstrationDocuments documents, Guid key, string device, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(record);

        // Which items belong to it does not depend on the day it was loaded: their numbers are made from names.
        var (items, house) = await OfAsync(record, DemonstrationWorkshop.Acts(documents, new DateOnly(2000, 1, 1)), removed: false, cancellation);
        var nameless = house with { Name = "", Address = "", Telephone = "", Guarantee = "", Privacy = "", Demonstration = false };
        return Act(key, "the demonstration taken off", device, [.. items.Select(i => i with { Removed = true }), nameless]);
    }

    private static Act Act(Guid key, string words, string device, IReadOnlyList<RecordItem> items) => new() { Key = key, Words = words, Device = device, Items = items };

    private static string? Refusal(ActOutcome outcome) => outcome.IsKept ? null : outcome.Words;

    private static async Task<bool> IsKnownAsync(IRecord record, IReadOnlyList<Act> acts, CancellationToken cancellation) =>
        acts.SelectMany(a => a.Items).OfType<CustomerCar>().FirstOrDefault() is { } car && await record.FindAsync(car.Id, cancellation) is not null;

    private static async Task<House> HouseAsync(IRecord record, IReadOnlyList<Act> acts, CancellationToken cancellation) =>
        acts.SelectMany(a => a.Items).OfType<House>().First() with { Version = (await record.WorkshopAsync(cancellation)).House.Version };

    /// <summary>What is in the record of the demonstration, and of its visits whatever was entered since.</summary>
    private static async Task<(IReadOnlyList<RecordItem> Items, House House)> OfAsync(IRecord record, IReadOnlyList<Act> acts, bool removed, CancellationToken cancellation)
    {
        var keys = acts.SelectMany(a => a.Items).Select(i => i.Key).ToHashSet();
        var all = new List<RecordItem>();
        await AddAsync<Person>();
        await AddAsync<Instrument>();
        await AddAsync<Owner>();
        await AddAsync<CustomerCar>();
        await AddAsync<Visit>();
        await AddAsync<CarDescription>();
        await AddAsync<Component>();
        await AddAsync<Finding>();
        await AddAsync<WorkNote>();
        await AddAsync<PartLine>();
        await AddAsync<Approval>();
        await AddAsync<Photograph>();
        await AddAsync<RoadRun>();
        await AddAsync<JetFitting>();
        await AddAsync<ScrewTurn>();
        await AddAsync<Worksheet>();
        await AddAsync<StockJet>();
        return (all, (await record.WorkshopAsync(cancellation)).House);

        async Task AddAsync<T>()
            where T : RecordItem<T> => all.AddRange((await record.AllAsync<T>(cancellation)).Where(i => i.Removed == removed && Belongs(i)));

        bool Belongs(RecordItem item) => keys.Contains(item.Key) || item switch
        {
            IOfVisit part => keys.Contains(part.Visit.Value),
            Visit visit => keys.Contains(visit.Car.Value),
            CarDescription description => keys.Contains(description.Car.Value),
            Component component => keys.Contains(component.Car.Value),
            _ => false,
        };
    }

    private static DemonstrationDocuments? Texts(string? samples) =>
        Names.Select(name => Text(samples, name + Ending)).ToList() is [{ } tern, { } osprey, { } gannet] ? new DemonstrationDocuments(tern, osprey, gannet) : null;

    private static DemonstrationRun? Run(string? folder, string name, string document)
    {
        var path = Path.Combine(folder ?? "", name);
        if (folder is null || !File.Exists(path) || CarDocument.Read(document).Car is not { } car)
        {
            return null;
        }

        using var file = File.OpenRead(path);
        var told = new LogBook().Read(file, name, car, new LogHints(), CancellationToken.None);
        return told.Points.Count == 0 ? null : new DemonstrationRun(name, told.Points, string.Join("\n", told.Told));
    }

    private static string? Text(string? folder, string name)
    {
        var path = Path.Combine(folder ?? "", name);
        return folder is not null && File.Exists(path) && new FileInfo(path).Length <= ICarShelf.LongestDocument ? File.ReadAllText(path) : null;
    }
}
