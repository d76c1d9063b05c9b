namespace Tickover.Workshop.Linkages;

/// <summary>The largest mismatch of a linkage's course, as a part of the mean's air.</summary>
/// <param name="Idle">With the pedal up.</param>
/// <param name="OffIdle">Anywhere off idle.</param>
/// <param name="OffIdleDown">How far down the pedal is there, 0 to 1.</param>
/// <param name="Carburettor">Number of the carburettor that is furthest off there.</param>
public sealed record LinkageWorst(double Idle, double OffIdle, double OffIdleDown, int Carburettor)
{
    /// <summary>Finds it.</summary>
    /// <param name="course">The course, pedal up first.</param>
    /// <param name="limits">Limits; off idle is where theirs for off idle holds.</param>
    /// <returns>The largest mismatches.</returns>
    public static LinkageWorst Of(IReadOnlyList<LinkageMoment> course, LinkageLimits limits)
    {
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(limits);
        var offIdle = course.Where(m => m.LimitPart <= limits.OffIdlePart).DefaultIfEmpty(course[^1]).MaxBy(m => m.WorstPart)!;
        var worst = Enumerable.Range(0, offIdle.Plates.Count).MaxBy(i => Math.Abs(offIdle.Plates[i].DeviationPart));
        return new LinkageWorst(course[0].WorstPart, offIdle.WorstPart, offIdle.Down, worst);
    }
}
