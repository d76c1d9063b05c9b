using Tickover.Workshop.Visits;

namespace Tickover.Workshop.FaultFinding.Recorded;

/// <summary>What a visit's record says of causes: its readings, kept worksheets and rounds.</summary>
public static class VisitEvidence
{
    /// <summary>Gathers it.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>One entry a cause, the first that speaks of it; keys are those of the table of the trade.</returns>
    public static IReadOnlyList<FaultEvidence> Of(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return
        [
            .. SheetEvidence.Of(record).Concat(ReadingEvidence.Of(record)).Concat(RoundEvidence.Of(record))
                .DistinctBy(e => (e.Symptom, e.Cause)),
        ];
    }
}
