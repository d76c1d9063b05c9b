namespace Tickover.Workshop.Visits;

/// <summary>How keeping an act ended.</summary>
/// <param name="Ending">How.</param>
/// <param name="Number">Number of the act in the journal; 0 where nothing was kept.</param>
/// <param name="Words">One sentence on what was kept, or why not and what to do.</param>
/// <param name="Clashes">Fields that two people changed differently; nothing of the act was kept then.</param>
public sealed record ActOutcome(ActEnding Ending, long Number, string Words, IReadOnlyList<Clash> Clashes)
{
    /// <summary>Whether the act is in the record, from this sending or from an earlier one.</summary>
    public bool IsKept => Ending is ActEnding.Kept or ActEnding.KeptBefore;
}
