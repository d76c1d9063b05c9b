using Tickover.Workshop.Visits;

namespace Tickover.Web.Visits;

/// <summary>What came of an entry, for the script that sent it.</summary>
/// <param name="Status">"kept", "keptBefore", "clashed", "refused" or "nothing".</param>
/// <param name="Words">One sentence.</param>
/// <param name="Number">Number of the act in the journal; 0 where nothing was kept.</param>
/// <param name="Href">The page it belongs to.</param>
public sealed record KeptAnswer(string Status, string Words, long Number, string Href)
{
    internal static KeptAnswer Of(ActOutcome outcome, string href) => new(
        outcome.Ending switch
        {
            ActEnding.Kept => "kept",
            ActEnding.KeptBefore => "keptBefore",
            ActEnding.Clashed => "clashed",
            ActEnding.Refused => "refused",
            _ => "nothing",
        },
        outcome.Words,
        outcome.Number,
        href);
}
