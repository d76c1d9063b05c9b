using Tickover.Reports.HandOver;
using Tickover.Workshop.Demonstration;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.Tests.HandOver;

/// <summary>Records of visits to write accounts of: those of the invented workshop, and empty ones.</summary>
internal static class Visits
{
    internal static readonly DateOnly Today = new(2026, 12, 2);

    internal static readonly HandOverSettings Settings = new() { On = Today, Address = "https://saltmarsh.example/visits/412" };

    /// <summary>A visit of which nothing was noted.</summary>
    internal static VisitRecord Empty() => new()
    {
        Visit = new Visit { Number = 7, ArrivedOn = Today },
        Car = new CustomerCar { Name = "Marram Six" },
        Workshop = new WorkshopRecord(new House(), [], []),
    };

    /// <summary>The visit of the invented workshop that has most in it.</summary>
    internal static VisitRecord Demonstration(Func<House, House>? change = null)
    {
        var items = Items();
        var visit = items.OfType<Visit>().MaxBy(v => items.OfType<Reading>().Count(r => r.Visit == v.Id))! with { Number = 412 };
        IReadOnlyList<T> Of<T>()
            where T : RecordItem, IOfVisit => [.. items.OfType<T>().Where(i => i.Visit == visit.Id)];
        var house = items.OfType<House>().Single();
        return new VisitRecord
        {
            Visit = visit,
            Car = items.OfType<CustomerCar>().Single(c => c.Id == visit.Car),
            Owner = items.OfType<Owner>().SingleOrDefault(o => o.Id == visit.Owner),
            Workshop = new WorkshopRecord(change?.Invoke(house) ?? house, [.. items.OfType<Person>()], [.. items.OfType<Instrument>()]),
            Descriptions = [.. items.OfType<CarDescription>().Where(d => d.Car == visit.Car)],
            Components = [.. items.OfType<Component>().Where(d => d.Car == visit.Car)],
            Stages = Of<StageMark>(),
            Readings = Of<Reading>(),
            Findings = Of<Finding>(),
            Photographs = Of<Photograph>(),
            Parts = Of<PartLine>(),
            Times = Of<TimeLine>(),
            Approvals = Of<Approval>(),
            Notes = Of<WorkNote>(),
            SignOffs = Of<SignOff>(),
            Cautions = Of<CautionSeen>(),
            Signatures = Of<Signature>(),
            Runs = Of<RoadRun>(),
            Fittings = Of<JetFitting>(),
        };
    }

    // The last state of every item, in the order first kept, numbered as the record numbers them
    private static List<RecordItem> Items()
    {
        Dictionary<Guid, RecordItem> kept = [];
        long number = 0;
        foreach (var act in DemonstrationWorkshop.Acts(Documents(), Today))
        {
            number++;
            foreach (var item in act.Items)
            {
                var first = kept.TryGetValue(item.Key, out var before) ? before.Kept : number;
                kept[item.Key] = item with { Kept = first, Changed = number, KeptBy = act.Person };
            }
        }

        return [.. kept.Values.Where(i => !i.Removed || i is Reading or Person or Instrument).OrderBy(i => i.Kept)];
    }

    private static DemonstrationDocuments Documents() => new(Sample("tern-2800"), Sample("osprey-v8"), Sample("gannet-1500"));

    private static string Sample(string name) => SampleFile(name + ".car.json");

    public static string SampleFile(string name) => File.ReadAllText(Path.Combine(Root(), "samples", name));

    internal static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!Directory.Exists(Path.Combine(folder, "samples")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("no folder samples above the tests");
        }

        return folder;
    }
}
