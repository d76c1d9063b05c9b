using Tickover.Practice;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Bench.Balance;

/// <summary>A practice engine as a balancer gets it: every act goes through here, and after each that changes something the study looks at the truth that the balancer cannot see.</summary>
internal sealed class Workbench
{
    private readonly PracticeEngine _engine;

    public Workbench(PracticeEngine engine)
    {
        _engine = engine;
        Watch();
    }

    public EnginePlan Plan => _engine.Plan;

    public bool RodsAreOff => _engine.RodsAreOff;

    public IReadOnlyList<BalanceStep> Steps => _engine.Steps;

    /// <summary>Turns made.</summary>
    public int Moves { get; private set; }

    /// <summary>Rounds read; one barrel read alone is its part of a round.</summary>
    public double Rounds { get; private set; }

    public double Minutes => _engine.Minutes;

    /// <summary>Turns, rounds and minutes when idle came within limits for good; null while it is not.</summary>
    public (int Moves, double Rounds, double Minutes)? IdleReached { get; private set; }

    /// <summary>The same, idle and off idle.</summary>
    public (int Moves, double Rounds, double Minutes)? AllReached { get; private set; }

    public PracticeAnswer Turn(string key, double turns)
    {
        var answer = _engine.Turn(key, turns);
        Moves += answer.Done ? 1 : 0;
        return Watched(answer);
    }

    public PracticeAnswer RodsOff() => _engine.RodsOff();

    public PracticeAnswer RodsOn() => Watched(_engine.RodsOn());

    public PracticeAnswer OfferRod(string key) => _engine.OfferRod(key);

    public PracticeAnswer LookAtStop(string key) => _engine.LookAtStop(key);

    public PracticeAnswer ReadRound(double? heldRpm, ReadKinds what)
    {
        var answer = _engine.ReadRound(heldRpm, what);
        Rounds += answer.Done ? 1 : 0;
        return answer;
    }

    public PracticeAnswer ReadBarrel(int barrel, double? heldRpm, ReadKinds what)
    {
        var answer = _engine.ReadBarrel(barrel, heldRpm, what);
        Rounds += answer.Done ? 1.0 / Plan.Barrels.Count : 0;
        return answer;
    }

    public PracticeAnswer Repair(FaultPlace place) => Watched(_engine.Repair(place));

    /// <summary>The truth at the end; for the study.</summary>
    public PracticeTruth Truth() => _engine.Truth();

    private PracticeAnswer Watched(PracticeAnswer answer)
    {
        if (answer.Done)
        {
            Watch();
        }

        return answer;
    }

    private void Watch()
    {
        var truth = _engine.Truth();
        IdleReached = truth.IdleWithin ? IdleReached ?? (Moves, Rounds, Minutes) : null;
        AllReached = truth.IdleWithin && truth.RaisedWithin ? AllReached ?? (Moves, Rounds, Minutes) : null;
    }
}
