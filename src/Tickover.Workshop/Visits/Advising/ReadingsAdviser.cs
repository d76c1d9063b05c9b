using Tickover.Workshop.Visits.Gates;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Visits.Advising;

/// <summary>As found before anything is touched, rounds that work has made old, and as left before the car goes.</summary>
public sealed class ReadingsAdviser : IAdviser
{
    /// <inheritdoc/>
    public string Name => "readings";

    /// <inheritdoc/>
    public IEnumerable<Advice> Of(AdviceContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var readings = Live.Readings(context.Record);
        return Baseline(context, readings).Concat(Stale(context, readings)).Concat(AsLeft(context, readings));
    }

    private static IEnumerable<Advice> Baseline(AdviceContext context, IReadOnlyList<Reading> readings)
    {
        var touched = Route.StateOf(context.Record, Stage.StripDown) is StageState.Begun or StageState.Done;
        var refused = context.Record.Notes.Any(n => !n.Removed && n.Kind == WorkKind.NotMeasured && n.Stage == Stage.Arrival);
        if (touched || refused || context.Stage > Stage.StripDown || readings.Any(r => r.Moment == Moment.AsFound && KeyReadings.Baseline.Contains(r.Measure, StringComparer.Ordinal)))
        {
            yield break;
        }

        yield return new Advice
        {
            Sentence = "Read how she runs as found, before anything is touched",
            Why = "Without it nobody can show what the work has changed; where she must not be run, write under Arrival that it was not measured.",
            Evidence = [GateStatus.Of(context.Record, Gate.EngineMayRun, context.Today).Words],
            Rank = AdviceRank.Baseline,
            Place = AdvicePlace.Of(Stage.Arrival),
            Minutes = 45,
        };
    }

    private static IEnumerable<Advice> Stale(AdviceContext context, IReadOnlyList<Reading> readings)
    {
        if (context.Stage < Stage.Balance)
        {
            yield break;
        }

        var rounds = readings.Where(r => r.Moment != Moment.AsFound && MeasureCatalogue.Find(r.Measure) is { IsRound: true }).GroupBy(r => r.Measure, StringComparer.Ordinal);
        foreach (var round in rounds.OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            var last = round.Max(r => r.Kept);
            if (Upsets.Of(context.Record).LastOrDefault(u => u.Act > last && Moves(u.Kind)) is { } upset)
            {
                yield return new Advice
                {
                    Sentence = $"Read again: {MeasureCatalogue.Find(round.Key)!.Label}",
                    Why = $"After the last round, {upset.Words}.",
                    Rank = AdviceRank.StaleReadings,
                    Place = AdvicePlace.Of(Stage.Balance),
                    Minutes = 20,
                };
            }
        }
    }

    private static IEnumerable<Advice> AsLeft(AdviceContext context, IReadOnlyList<Reading> readings)
    {
        if (context.Stage != Stage.HandOver)
        {
            yield break;
        }

        var found = readings.Where(r => r.Moment == Moment.AsFound).Select(r => r.Measure).ToHashSet(StringComparer.Ordinal);
        var left = readings.Where(r => r.Moment == Moment.AsLeft).Select(r => r.Measure).ToHashSet(StringComparer.Ordinal);
        var missing = KeyReadings.AsLeft.Where(k => found.Contains(k) && !left.Contains(k)).Select(k => MeasureCatalogue.Find(k)?.Label ?? k).ToList();
        if (missing.Count > 0)
        {
            yield return new Advice
            {
                Sentence = $"Read as left: {missing[0]}",
                Why = "It was read as found, and the account sets the one beside the other.",
                Evidence = [.. missing.Select(m => $"{m}: as found, not as left")],
                Rank = AdviceRank.AsLeft,
                Place = AdvicePlace.Of(Stage.Balance),
                Minutes = missing.Count * 10,
            };
        }
    }

    // Jets, plugs and points change what the meter reads, and so does a carburettor taken off; a hose does not.
    private static bool Moves(Disturbance kind) =>
        kind.HasFlag(Disturbance.Carburettors) || (kind.HasFlag(Disturbance.Settings) && (kind & (Disturbance.Engine | Disturbance.FuelOrLinkage)) != Disturbance.None);
}
