using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Tests.Visits;

/// <summary>An empty visit in an invented workshop, and items numbered as the record would number them.</summary>
internal static class Bench
{
    public static readonly DateOnly Today = new(2026, 11, 25);

    public static readonly Person Hand = new() { Name = "Ros Hale", Initials = "RH" };

    public static readonly Person Gone = new() { Name = "Ivo Penn", Initials = "IP", Removed = true };

    public static VisitRecord Visit(Visit? visit = null) => new()
    {
        Visit = visit ?? new Visit { Number = 7, ArrivedOn = Today.AddDays(-13), DueOn = Today.AddDays(30), Complaint = "Lumpy.", Scope = "Balance.", ScopeAgreed = "in writing" },
        Car = new CustomerCar { Name = "Larkfield Tern 2800", Slug = "larkfield-tern-2800" },
        Workshop = new WorkshopRecord(new House { Name = "Saltmarsh Motor House", Demonstration = true }, [Hand, Gone], []),
    };
}
