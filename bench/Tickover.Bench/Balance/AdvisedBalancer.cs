using Tickover.Practice;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Bench.Balance;

/// <summary>Does on an engine what our advice says, step by step, and nothing else.</summary>
internal sealed class AdvisedBalancer(Action<BalanceAdvice>? told = null) : IBalancer
{
    private const int MostSteps = 120;
    private readonly List<BalanceStep> _steps = [];
    private int _rounds;
    private bool _done;

    public string Name => "advice";

    public BalancerSuspicion Balance(Workbench engine)
    {
        var ranks = new Dictionary<FaultPlace, int>();
        for (var i = 0; i < MostSteps && !_done; i++)
        {
            var advice = BalanceAdvice.Of(new BalanceBook
            {
                Plan = engine.Plan,
                Steps = _steps,
                Meter = new MeterSettings { Available = ReadKinds.Air | ReadKinds.Vacuum | ReadKinds.Lambda | ReadKinds.Header },
            });
            told?.Invoke(advice);
            for (var rank = 0; rank < advice.Causes.Count; rank++)
            {
                ranks[advice.Causes[rank].Fault] = rank + 1;
            }

            _done = advice.IsBalanced; // the study is of air; mixture and speed come after
            if (!_done)
            {
                Do(engine, advice.Next);
            }
        }

        return new BalancerSuspicion(ranks);
    }

    private void Do(Workbench engine, NextMove next)
    {
        switch (next.Kind)
        {
            case NextKind.Done:
                _done = true;
                break;
            case NextKind.Turn:
                Keep(engine.Turn(next.Adjuster!.Key, next.Turns));
                break;
            case NextKind.RodsOff:
                Keep(engine.RodsOff());
                break;
            case NextKind.RodsOn:
                Keep(engine.RodsOn());
                break;
            case NextKind.OfferRod:
                Keep(engine.OfferRod(next.Adjuster!.Key));
                break;
            case NextKind.Look:
                Keep(engine.LookAtStop(next.Adjuster!.Key));
                break;
            case NextKind.Repair:
                _steps.Add(new CheckedFor(next.Fault!, engine.Repair(next.Fault!).WasThere ?? false));
                break;
            default:
                Read(engine, next);
                break;
        }
    }

    private void Read(Workbench engine, NextMove next)
    {
        if (next.Barrels.Count == 0)
        {
            Keep(engine.ReadRound(next.HeldRpm, next.Read));
            return;
        }

        var readings = next.Barrels.Select(b => engine.ReadBarrel(b, next.HeldRpm, next.Read).Reading).OfType<BarrelReading>().ToList();
        _steps.Add(new RoundRead(new BalanceRound { Number = ++_rounds, HeldRpm = next.HeldRpm, RodsOff = engine.RodsAreOff, Readings = readings }));
    }

    private void Keep(PracticeAnswer answer)
    {
        if (answer.Step is RoundRead { Round: var round })
        {
            _steps.Add(new RoundRead(round with { Number = ++_rounds }));
        }
        else if (answer.Step is { } step)
        {
            _steps.Add(step);
        }
        else
        {
            _done = true;
        }
    }
}
