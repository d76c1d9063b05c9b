using Tickover.Workshop.Balance;

namespace Tickover.Practice.Virtual;

/// <summary>Counts what was done. The minutes are those of practised hands (assumed; a round of eight barrels in two minutes is common practice).</summary>
internal sealed class Tally
{
    public const double MinutesAMove = 0.5;
    public const double MinutesForRods = 4;
    public const double MinutesALook = 0.5;

    // eight barrels and the first again in two minutes
    private const double MinutesABarrel = 2.0 / 9;
    private const double MinutesAFurtherKind = 0.1;

    public int Moves { get; set; }

    public int Handling { get; set; }

    public int Rounds { get; set; }

    public int SingleReadings { get; set; }

    public int NamedWrong { get; set; }

    public double Minutes { get; set; }

    public static double MinutesToRead(ReadKinds what) =>
        MinutesABarrel + (MinutesAFurtherKind * Math.Max(0, System.Numerics.BitOperations.PopCount((uint)what) - 1));

    public PracticeScore Score(PracticeTruth truth, (int Hidden, int Found) faults) => new()
    {
        Moves = Moves,
        Handling = Handling,
        Rounds = Rounds,
        SingleReadings = SingleReadings,
        Minutes = Math.Round(Minutes, 1),
        IdleRpm = Math.Round(truth.IdleRpm),
        IdleSpread = truth.IdleAir.Count == 0 ? 0 : truth.IdleAir.Max() - truth.IdleAir.Min(),
        IdleWorst = PracticeLimits.Worst(truth.IdleAir),
        RaisedWorst = truth.RaisedAir.Values.Max(PracticeLimits.Worst),
        IdleWithin = truth.IdleWithin,
        RaisedWithin = truth.RaisedWithin,
        FaultsHidden = faults.Hidden,
        FaultsFound = faults.Found,
        NamedWrong = NamedWrong,
    };
}
