using Tickover.Workshop.Visits;

namespace Tickover.Workshop.FaultFinding.Recorded;

/// <summary>What a visit's record says of causes: its readings, kept worksheets and rounds.</summary>
public static class VisitEvidence
{
    /// <summary>Gathers it.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>One entry a cause; what speaks for it goes before what speaks against it. Keys are those of the table of the trade.</returns>
    public static IReadOnlyList<FaultEvidence> Of(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return
        [
            .. SheetEvidence.Of(record).Concat(ReadingEvidence.Of(record)).Concat(RoundEvidence.Of(record))
                .OrderBy(e => e.Against)       // one blocked vent counts, however many clear ones there are
                .DistinctBy(e => (e.Symptom, e.Cause)),
        ];
    }
}
