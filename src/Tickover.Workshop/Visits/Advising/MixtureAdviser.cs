namespace Tickover.Workshop.Visits.Advising;

/// <summary>What the mixture map asks for.</summary>
public sealed class MixtureAdviser : IAdviser
{
    /// <inheritdoc/>
    public string Name => "mixture";

    /// <inheritdoc/>
    public IEnumerable<Advice> Of(AdviceContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Mixture?.Of(context.Record) is not { } words)
        {
            yield break;
        }

        yield return new Advice
        {
            Sentence = words.Sentence,
            Why = words.Why,
            Evidence = words.Evidence,
            Rank = context.Stage == Stage.Mixture ? AdviceRank.Mixture : AdviceRank.MixtureLater,
            Place = new AdvicePlace(words.FromLogs ? AdvicePlaceKind.RoadLogs : AdvicePlaceKind.Mixture, Stage.Mixture),
            Minutes = 30,
        };
    }
}
