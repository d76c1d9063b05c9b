using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Advising;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Web.Api;

/// <summary>A car in the shop, in one line.</summary>
/// <param name="Id">Number of the visit.</param>
/// <param name="Number">Short number for papers.</param>
/// <param name="Car">The car as people call it.</param>
/// <param name="Slug">The name its pages are filed under.</param>
/// <param name="ArrivedOn">The day it came.</param>
/// <param name="DueOn">The day it was promised for.</param>
/// <param name="Stage">The stage it is at.</param>
/// <param name="WaitsOn">Who has the ball.</param>
/// <param name="Next">The most useful next thing; null where nothing waits.</param>
public sealed record VisitRow(string Id, int Number, string Car, string Slug, DateOnly ArrivedOn, DateOnly? DueOn, string Stage, string WaitsOn, string? Next)
{
    internal static VisitRow Of(VisitRecord record, DateTimeOffset now)
    {
        var context = new AdviceContext(record, now);
        return new VisitRow(
            record.Visit.Id.ToString(), record.Visit.Number, record.Car.Name, record.Car.Slug, record.Visit.ArrivedOn, record.Visit.DueOn,
            context.Stage.Words(), record.Visit.WaitsOn.ToString(), NextSteps.Of(context) is [var next, ..] ? next.Sentence : null);
    }
}
