namespace Tickover.Workshop.Visits.Advising;

/// <summary>Readings that stand: neither struck out nor replaced.</summary>
internal static class Live
{
    public static IReadOnlyList<Reading> Readings(VisitRecord record)
    {
        var replaced = record.Readings.Where(r => !r.Removed && r.Corrects is not null).Select(r => r.Corrects!.Value).ToHashSet();
        return [.. record.Readings.Where(r => !r.Removed && !replaced.Contains(r.Id))];
    }
}
