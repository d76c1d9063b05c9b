using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Tests.Demonstration;

/// <summary>What a record would hold after a list of acts: items numbered by the act that kept them.</summary>
internal static class Replay
{
    public static IReadOnlyList<VisitRecord> Of(IReadOnlyList<Act> acts)
    {
        List<RecordItem> items = [.. acts.SelectMany((act, i) => act.Items.Select(item => item with { Kept = i + 1, Changed = i + 1, KeptBy = act.Person }))];
        var workshop = new WorkshopRecord(items.OfType<House>().Single(), [.. items.OfType<Person>()], [.. items.OfType<Instrument>()]);
        return [.. items.OfType<Visit>().Select(v => Visit(v, items, workshop))];
    }

    private static VisitRecord Visit(Visit visit, List<RecordItem> items, WorkshopRecord workshop) => new()
    {
        Visit = visit,
        Car = items.OfType<CustomerCar>().Single(c => c.Id == visit.Car),
        Owner = items.OfType<Owner>().Single(o => o.Id == visit.Owner),
        Workshop = workshop,
        Descriptions = [.. items.OfType<CarDescription>().Where(d => d.Car == visit.Car)],
        Stages = Of<StageMark>(visit, items),
        Readings = Of<Reading>(visit, items),
        Findings = Of<Finding>(visit, items),
        Parts = Of<PartLine>(visit, items),
        Times = Of<TimeLine>(visit, items),
        Approvals = Of<Approval>(visit, items),
        Notes = Of<WorkNote>(visit, items),
        SignOffs = Of<SignOff>(visit, items),
        Cautions = Of<CautionSeen>(visit, items),
        Signatures = Of<Signature>(visit, items),
    };

    private static IReadOnlyList<T> Of<T>(Visit visit, List<RecordItem> items)
        where T : IOfVisit => [.. items.OfType<T>().Where(i => i.Visit == visit.Id)];
}
