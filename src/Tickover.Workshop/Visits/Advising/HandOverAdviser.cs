namespace Tickover.Workshop.Visits.Advising;

/// <summary>What stands between the car and its hand-over.</summary>
public sealed class HandOverAdviser : IAdviser
{
    /// <inheritdoc/>
    public string Name => "hand-over";

    /// <inheritdoc/>
    public IEnumerable<Advice> Of(AdviceContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Stage != Stage.HandOver || context.Record.Visit.LeftOn is not null)
        {
            return [];
        }

        var blockers = HandOverBlockers.Of(context.Record);
        return
        [
            new Advice
            {
                Sentence = blockers.Count > 0 ? blockers[0].Sentence : "Print the account and hand the car back",
                Why = blockers.Count > 0 ? blockers[0].Why : "Everything the account needs is in the record.",
                Evidence = [.. blockers.Skip(1).Select(b => b.Sentence)],
                Rank = AdviceRank.HandOver,
                Place = AdvicePlace.Of(Stage.HandOver),
                Minutes = 90,
            },
        ];
    }
}
