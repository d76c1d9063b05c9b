using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Balance.Plans;

/// <summary>What stands on the engine of a visit.</summary>
public static class PlanOfVisit
{
    /// <summary>The plan by which the visit's rounds are read.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>The plan kept on a worksheet; without one the plan that follows from the car's description; null where there is neither.</returns>
    public static EnginePlan? Of(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return OnSheet(record) ?? (Places.CarOf(record) is { } car ? PlanOfCar.Of(car) : null);
    }

    /// <summary>The plan kept on a worksheet.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>The plan; null where none is kept.</returns>
    public static EnginePlan? OnSheet(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record.SheetOf(PlanDocument.Format) is { } sheet ? PlanDocument.Read(sheet.Document).Plan : null;
    }
}
