using Tickover.Records.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests;

/// <summary>A record with a workshop, a person, a car and a visit in it, and short ways to write to it.</summary>
public sealed class OpenRecord(RecordStore store) : IDisposable
{
    public RecordStore Store { get; } = store;

    public Person Ruth { get; } = new() { Name = "Ruth Harrow", Initials = "RH" };

    public CustomerCar Car { get; } = new() { Name = "Larkfield Tern 2800", Slug = "larkfield-tern-2800", Registration = "LTN 280" };

    public Visit Visit { get; private set; } = new();

    public static async Task<OpenRecord> BeginAsync(RecordHome home, TimeProvider? clock = null)
    {
        var store = await RecordOpening.OpenAsync(home.NewPlace(), Beginning.Allowed, clock ?? TimeProvider.System, TestContext.Current.CancellationToken);
        var open = new OpenRecord(store);
        open.Visit = new Visit { Car = open.Car.Id, ArrivedOn = new DateOnly(2026, 11, 12), Complaint = "The gauge lies." };
        Assert.Equal(ActEnding.Kept, (await open.KeepAsync("car taken in", open.Ruth, open.Car, open.Visit)).Ending);
        return open;
    }

    public Task<ActOutcome> KeepAsync(string words, params RecordItem[] items) => KeepFromAsync("bench", words, items);

    public Task<ActOutcome> KeepFromAsync(string device, string words, params RecordItem[] items) => Store.KeepAsync(
        new Act { Key = Guid.NewGuid(), Items = items, Words = words, Visit = Visit.Id, Person = string.Equals(device, "bench", StringComparison.Ordinal) ? Ruth.Id : null, Device = device },
        TestContext.Current.CancellationToken);

    public Task<ActOutcome> UndoAsync(string device = "bench") =>
        Store.UndoAsync(new StepBack { Key = Guid.NewGuid(), Device = device, Visit = Visit.Id }, TestContext.Current.CancellationToken);

    public Task<ActOutcome> RedoAsync(string device = "bench") =>
        Store.RedoAsync(new StepBack { Key = Guid.NewGuid(), Device = device, Visit = Visit.Id }, TestContext.Current.CancellationToken);

    public async Task<VisitRecord> LookAsync() => (await Store.VisitAsync(Visit.Id, TestContext.Current.CancellationToken))!;

    public async Task<Finding> FindingAsync(Finding finding) => (await Store.FindAsync(finding.Id, TestContext.Current.CancellationToken))!;

    public Reading Airflow(int barrel, double kilogramsPerHour) => new()
    {
        Visit = Visit.Id,
        Stage = Stage.Balance,
        Measure = "idleAirflow",
        Place = new Place(PlaceKind.Barrel, $"{barrel}"),
        Typed = FormattableString.Invariant($"{kilogramsPerHour} kg/h"),
        Si = kilogramsPerHour / 3600,
        TakenAt = new DateTimeOffset(2026, 11, 25, 9, 30, 0, TimeSpan.FromHours(1)),
    };

    public Finding Hose() => new() { Visit = Visit.Id, Stage = Stage.Supply, What = "Cross-pipe hose perished", Where = "between the tanks", Severity = Severity.Unsafe };

    public void Dispose() => Store.Dispose();
}
