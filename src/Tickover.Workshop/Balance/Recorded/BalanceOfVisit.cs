using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Balance.Recorded;

/// <summary>The balancing of a visit as its record tells it: rounds, turns and acts in the order they were kept.</summary>
public sealed record BalanceOfVisit
{
    private readonly IReadOnlyList<RecordedRound> _rounds;
    private readonly int _since;

    private BalanceOfVisit(EnginePlan plan, IReadOnlyList<BalanceStep> steps, IReadOnlyList<RecordedRound> rounds, int since) =>
        (Plan, Steps, _rounds, _since) = (plan, steps, rounds, since);

    /// <summary>What stands on the engine.</summary>
    public EnginePlan Plan { get; }

    /// <summary>What was read and done, in order.</summary>
    public IReadOnlyList<BalanceStep> Steps { get; }

    /// <summary>Whether the rods are off now.</summary>
    public bool RodsOff => Steps.LastOrDefault(s => s is RodsTakenOff or RodsPutBack) is RodsTakenOff;

    /// <summary>What was read in this visit, so that more of it may be asked for: air always.</summary>
    public ReadKinds Available => _rounds.Aggregate(Steps.Any(s => s is BankGas) ? ReadKinds.Air | ReadKinds.BankGas : ReadKinds.Air, (kinds, r) => kinds | r.Kinds);

    /// <summary>Puts the balancing of a visit together.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>The balancing; null where there is neither a plan nor a description of the car, so that nobody knows its barrels.</returns>
    public static BalanceOfVisit? Of(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return PlanOfVisit.Of(record) is { } plan ? Of(record, plan) : null;
    }

    /// <summary>Puts the balancing of a visit together for a plan.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="plan">What stands on the engine.</param>
    /// <returns>The balancing.</returns>
    public static BalanceOfVisit Of(VisitRecord record, EnginePlan plan)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(plan);
        var (order, rounds, since, rodsOff) = (new List<object>(), new List<RecordedRound>(), 0, false);
        foreach (var item in Events(record))
        {
            if (item is ScrewTurn turn)
            {
                order.Add(Step(turn, plan));
                rodsOff = turn.Kind == ScrewTurnKind.RodsOff || (rodsOff && turn.Kind != ScrewTurnKind.RodsOn);
                since = Moves(turn) ? rounds.Count : since;
            }
            else if (item is Reading { Place.Kind: PlaceKind.Bank } sample)
            {
                order.AddRange(RecordedGas.Of(sample, plan));
            }
            else if (item is Reading reading && RoundMeasure.Find(reading.Measure) is { } measure && RoundMeasure.BarrelOf(reading.Place, plan) is { } barrel)
            {
                Into(rounds, order, since, reading, measure, rodsOff).Add(barrel, measure, reading);
            }
        }

        var steps = order.Select(o => o as BalanceStep ?? new RoundRead(((RecordedRound)o).ToRound(rounds.IndexOf((RecordedRound)o) + 1)));
        return new BalanceOfVisit(plan, [.. steps], rounds, since);
    }

    /// <summary>The round of a measure that is being read: begun, nothing turned since, not every barrel read yet.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="sequence">The barrels to be read.</param>
    /// <returns>Its number and the barrels read in it so far; a new number and none where none is open.</returns>
    public (Guid Round, IReadOnlyList<int> Read) Open(RoundMeasure measure, IReadOnlyList<int> sequence)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(sequence);
        var last = _rounds.Skip(_since).LastOrDefault(r => r.Measure == measure);
        return last is { IsOneAct: false } && last.Order.All(sequence.Contains) && ReadPlan.LeftOf(sequence, last.Order).Count > 0 ? (last.Id, last.Order) : (Guid.NewGuid(), []);
    }

    /// <summary>The round that wants only its proof, the first barrel again; null where there is none.</summary>
    /// <param name="whole">The barrels of a whole round in order, the first again last.</param>
    /// <returns>The plan of the one reading left.</returns>
    internal ReadPlan? WantingProof(IReadOnlyList<int> whole) =>
        _rounds.Skip(_since).LastOrDefault() is { IsOneAct: false } last && last.Order.All(whole.Contains) && ReadPlan.LeftOf(whole, last.Order) is [var proof] && proof == whole[0]
            ? new ReadPlan(last.Measure, last.Id, whole, last.Order)
            : null;

    /// <summary>Numbers of the readings and acts the record holds of the balancing, by which a tablet knows what has arrived.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>The numbers, oldest first.</returns>
    public static IReadOnlyList<Guid> Arrived(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return [.. Events(record).Select(i => i.Key)];
    }

    private static IEnumerable<RecordItem> Events(VisitRecord record) =>
        Rounds.Valid(record.Readings).Where(r => r.Round is not null).Cast<RecordItem>().Concat(record.ScrewTurns.Where(t => !t.Removed)).OrderBy(i => i.Kept);

    // What was only looked at moves nothing, so a round may go on after it.
    private static bool Moves(ScrewTurn turn) => turn.Kind is ScrewTurnKind.Turned or ScrewTurnKind.RodsOff or ScrewTurnKind.RodsOn || turn.Found;

    private static RecordedRound Into(List<RecordedRound> rounds, List<object> order, int since, Reading reading, RoundMeasure measure, bool rodsOff)
    {
        var open = rounds.Skip(since).ToList();
        var known = open.LastOrDefault(r => r.Id == reading.Round && r.Measure == measure) ?? (open.LastOrDefault() is { } last && last.Takes(measure) ? last : null);
        if (known is null)
        {
            known = new RecordedRound(reading.Round!.Value, measure, reading, rodsOff);
            rounds.Add(known);
            order.Add(known);
        }

        return known;
    }

    private static BalanceStep Step(ScrewTurn turn, EnginePlan plan) => turn.Kind switch
    {
        ScrewTurnKind.RodsOff => new RodsTakenOff(),
        ScrewTurnKind.RodsOn => new RodsPutBack(),
        ScrewTurnKind.LookedAt => new LookedAt(turn.Adjuster, turn.GapMillimetres ?? 0),
        ScrewTurnKind.CheckedFor => FaultPlace.Read(turn.Adjuster, plan) is { } fault ? new CheckedFor(fault, turn.Found) : new LookedAt(turn.Adjuster, 0),
        _ => new Turned(turn.Adjuster, turn.Turns),
    };
}
