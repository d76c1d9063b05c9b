using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Bench.Balance;

/// <summary>Case (a): rods off, by-passes shut, stops, by-passes, banks, rods on, off idle; the lot up to three times (trade report 2.6).</summary>
internal sealed class TwoBanksHabit
{
    private const int Loops = 3;
    private const int MostStops = 16;
    private const int MostRods = 8;
    private const double FlatMillimetres = 0.8 / 6;
    private const double DropsOn = 0.1;
    private const double HalfTurn = 0.5;
    private const double Little = 0.05;
    private const double BanksApart = 0.05;
    private readonly HabitHands _hands;
    private readonly HabitStrip _strip;
    private readonly HabitBypasses _bypasses;
    private readonly List<string> _stops;

    public TwoBanksHabit(HabitHands hands)
    {
        _hands = hands;
        _strip = new HabitStrip(hands);
        _bypasses = new HabitBypasses(hands, _strip);
        _stops = [.. hands.Plan.Carburettors.Select(c => $"stop:{c.Number}")];
    }

    public BalancerSuspicion Run()
    {
        for (var loop = 0; loop < Loops && !_hands.Tired; loop++)
        {
            AtIdle(first: loop == 0);
            RodsBack();
            if (OffIdle() && _hands.IdleGood(_hands.Air()))
            {
                break;
            }
        }

        return _strip.Suspicion;
    }

    private void AtIdle(bool first)
    {
        _hands.Engine.RodsOff();
        if (first)
        {
            _bypasses.Shut();
        }

        if (_hands.Air().Length == 0)
        {
            _stops.ForEach(s => _hands.Turn(s, 2 * HabitHands.Eighth));
        }

        _hands.SetSpeed(_stops);
        for (var bank = 1; bank <= _hands.Plan.Banks; bank++)
        {
            Bank([.. _hands.Plan.Carburettors.Where(c => c.Bank == bank)]);
        }

        _bypasses.Match();
        Banks();
        _hands.SetSpeed(_stops);
    }

    // the carburettor furthest from the mean of its bank, by its higher barrel, an eighth at a time
    private void Bank(IReadOnlyList<PlanCarburettor> carburettors)
    {
        for (var i = 0; i < MostStops && !_hands.Tired; i++)
        {
            var air = _hands.Air();
            if (air.Length == 0)
            {
                return;
            }

            var values = carburettors.Select(c => c.Barrels.Max(b => air[b - 1])).ToList();
            var worst = Enumerable.Range(0, values.Count).MaxBy(k => Math.Abs(values[k] - values.Average()));
            var off = values[worst] - values.Average();
            if (Math.Abs(off) <= HabitHands.Pleased)
            {
                return;
            }

            _hands.Turn($"stop:{carburettors[worst].Number}", off > 0 ? -HabitHands.Eighth : HabitHands.Eighth);
        }
    }

    private void Banks()
    {
        for (var i = 0; i < 4 && _hands.Plan.Banks > 1 && !_hands.Tired; i++)
        {
            var air = _hands.Air();
            if (air.Length == 0)
            {
                return;
            }

            var means = Enumerable.Range(1, 2).Select(b => HabitHands.Mean(air, _hands.Plan.Barrels.Where(x => x.Bank == b).Select(x => x.Number))).ToList();
            if (Math.Abs(means[0] - means[1]) <= BanksApart * air.Average())
            {
                return;
            }

            var low = means[0] < means[1] ? 1 : 2;
            foreach (var carburettor in _hands.Plan.Carburettors.Where(c => c.Bank == low))
            {
                _hands.Turn($"stop:{carburettor.Number}", HabitHands.Eighth);
            }
        }
    }

    // each rod so that its ball drops on without moving a plate
    private void RodsBack()
    {
        foreach (var rod in _hands.Plan.Adjusters.Where(a => a.Kind is AdjusterKind.LinkRod or AdjusterKind.BankRod))
        {
            for (var i = 0; i < 4; i++)
            {
                if (_hands.Engine.OfferRod(rod.Key).Step is not LookedAt { Gap: var gap } || Math.Abs(gap) <= DropsOn || !_hands.Turn(rod.Key, -Math.Max(1, Math.Round(Math.Abs(gap) / FlatMillimetres)) * Math.Sign(gap) / rod.StepsATurn))
                {
                    break;
                }
            }
        }

        _hands.Engine.RodsOn();
    }

    // a carburettor that lags opens late: its rod by half-turns, by flats once it has gone past; idle looked at after each
    private bool OffIdle()
    {
        var ways = new Dictionary<string, int>(StringComparer.Ordinal);
        var past = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < MostRods && !_hands.Tired; i++)
        {
            var (slow, fast) = (_hands.Air(1500), _hands.Air(2500));
            if (slow.Length == 0 || fast.Length == 0)
            {
                return false;
            }

            if (_hands.OffIdleGood(slow) && _hands.OffIdleGood(fast))
            {
                return true;
            }

            var worst = _hands.Plan.Carburettors.Where(c => Rod(c) is not null).MaxBy(c => Math.Abs(Off(slow, c)))!;
            var (rod, sign) = (Rod(worst)!, Off(slow, worst) > 0 ? -1 : 1);
            if (ways.TryGetValue(rod, out var before) && before != sign)
            {
                past.Add(rod);
            }

            ways[rod] = sign;
            _hands.Turn(rod, sign * (past.Contains(rod) || Math.Abs(Off(slow, worst)) < Little ? 1.0 / 6 : HalfTurn));
            _hands.Air();
        }

        return false;
    }

    private static double Off(double[] air, PlanCarburettor carburettor) => (HabitHands.Mean(air, carburettor.Barrels) / air.Average()) - 1;

    private string? Rod(PlanCarburettor carburettor) =>
        _hands.Plan.Find($"rod:{carburettor.Number}") is { } rod ? rod.Key
        : carburettor.Bank > 1 && carburettor.Number == _hands.Plan.Carburettors.First(c => c.Bank == carburettor.Bank).Number ? "bankrod"
        : null;
}
