using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Balance.Recorded;

/// <summary>A round of the record as it is being put together.</summary>
internal sealed class RecordedRound(Guid id, RoundMeasure measure, Reading first, bool rodsOff)
{
    private readonly List<(int Barrel, RoundMeasure Measure, Reading Reading)> _readings = [];

    /// <summary>The number the page gave it.</summary>
    public Guid Id => id;

    /// <summary>The measure it was begun in.</summary>
    public RoundMeasure Measure => measure;

    /// <summary>Whether rods were off.</summary>
    public bool RodsOff => rodsOff;

    /// <summary>The barrels in the order read, a barrel read again again.</summary>
    public IReadOnlyList<int> Order => [.. _readings.Where(r => r.Measure == measure).Select(r => r.Barrel)];

    /// <summary>What was read in it.</summary>
    public ReadKinds Kinds => _readings.Aggregate(ReadKinds.None, (kinds, r) => kinds | r.Measure.Kind);

    /// <summary>Whether all of it was kept at once, from a form that has no proof.</summary>
    public bool IsOneAct => _readings.Count > 1 && _readings.Select(r => r.Reading.Kept).Distinct().Count() == 1;

    /// <summary>Whether another measure belongs to this same round: same speed, nothing of it read yet.</summary>
    public bool Takes(RoundMeasure other) => other.HeldRpm == measure.HeldRpm && other.Kind != measure.Kind && other.Kind is not ReadKinds.Speed && measure.Kind is not ReadKinds.Speed;

    /// <summary>Adds a reading.</summary>
    public void Add(int barrel, RoundMeasure of, Reading reading) => _readings.Add((barrel, of, reading));

    /// <summary>The round.</summary>
    /// <param name="number">Its number from 1.</param>
    public BalanceRound ToRound(int number)
    {
        var own = _readings.Where(r => r.Measure == measure).ToList();
        var begun = own[0].Barrel;
        // The first barrel read again after another is the proof that nothing drifted; before, it is a reading put right.
        var again = own.FindLastIndex(r => r.Barrel == begun);
        var isProof = again > 0 && own.Take(again).Any(r => r.Barrel != begun);
        var kept = isProof ? own.Where((_, k) => k != again).ToList() : own;
        var others = _readings.Where(r => r.Measure != measure).ToList();
        return new BalanceRound
        {
            Number = number,
            HeldRpm = measure.HeldRpm,
            Moment = first.Moment,
            RodsOff = rodsOff,
            Readings = [.. kept.GroupBy(r => r.Barrel).Select(g => Put(g.Key, [.. others.Where(o => o.Barrel == g.Key), g.Last()]))],
            Again = isProof ? Put(begun, [own[again]]) : null,
        };
    }

    private static BarrelReading Put(int barrel, IEnumerable<(int Barrel, RoundMeasure Measure, Reading Reading)> readings) =>
        readings.Aggregate(new BarrelReading(barrel), (into, r) => r.Measure.Into(into, r.Reading.Si) with { Rpm = r.Reading.EngineSpeedRpm ?? into.Rpm });
}
