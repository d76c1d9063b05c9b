namespace Tickover.Workshop.Visits.Measures;

/// <summary>One measure at one place: as found beside as left.</summary>
/// <param name="Place">The place.</param>
/// <param name="AsFound">The last valid reading as found; null where there is none.</param>
/// <param name="AsLeft">The last valid reading as left; null where there is none.</param>
public sealed record BeforeAndAfterRow(Place Place, JudgedReading? AsFound, JudgedReading? AsLeft)
{
    /// <summary>As left less as found, in SI; null where one of them has no figure.</summary>
    public double? ChangeSi => AsLeft?.Reading.Si - AsFound?.Reading.Si;
}
