using Tickover.Workshop.Visits.Gates;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Visits.Advising;

/// <summary>The stage in hand, with what is missing of its key readings.</summary>
public sealed class StageAdviser : IAdviser
{
    /// <inheritdoc/>
    public string Name => "stages";

    /// <inheritdoc/>
    public IEnumerable<Advice> Of(AdviceContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Stage == Stage.HandOver)
        {
            yield break;
        }

        var read = Live.Readings(context.Record).Select(r => r.Measure).ToHashSet(StringComparer.Ordinal);
        var missing = KeyReadings.Of(context.Stage).Where(k => !read.Contains(k)).Select(k => MeasureCatalogue.Find(k)?.Label ?? k).ToList();
        yield return new Advice
        {
            Sentence = Sentence(context, missing),
            Why = missing.Count == 0 ? "All its key readings are in." : $"{missing.Count} of its {KeyReadings.Of(context.Stage).Count} key readings {(missing.Count == 1 ? "is" : "are")} missing.",
            Evidence = [.. missing.Select(m => $"{m}: not read")],
            Rank = AdviceRank.Stage,
            Place = AdvicePlace.Of(context.Stage),
            Minutes = Minutes(context.Stage),
        };
    }

    private static string Sentence(AdviceContext context, List<string> missing) => (context.IsBegun, missing.Count) switch
    {
        (false, _) => $"Begin {context.Stage.Words()}",
        (true, 0) => $"Close {context.Stage.Words()}, or write what is left of it",
        _ => $"Go on with {context.Stage.Words()}: read {missing[0]}",
    };

    // Hours of one experienced person, from the trade's estimates stage by stage; common practice.
    private static int Minutes(Stage stage) => stage switch
    {
        Stage.Arrival => 180,
        Stage.Storage => 480,
        Stage.Gauge => 270,
        Stage.Supply => 420,
        Stage.StripDown => 540,
        Stage.Build => 450,
        Stage.Balance => 100,
        Stage.Mixture => 120,
        _ => 240,
    };
}
