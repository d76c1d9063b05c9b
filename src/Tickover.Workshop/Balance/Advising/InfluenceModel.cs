using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>Runs through a book and learns levels and gains in every condition.</summary>
internal sealed class InfluenceModel
{
    private const double RoundNoise = 0.007;            // part of the mean: an engine never stands quite where it stood
    private const double SpeedChange = 100;             // rpm
    private const double OilChange = 10;                // °C
    private const double ChangedPart = 0.05;
    private const double GainsLooser = 1.5;
    private const double RodsMove = 0.7;                // kg/h by which plates may move when rods come off or go on
    private const double HoldsMore = 0.3;               // kg/h by which a rod turned on its ball may move plates at idle
    private const double TurnUnsure = 0.02;             // turns: backlash and the eye
    private const double HeldTurnUnsure = 0.5;          // part of a turn that may do nothing while rods can hold a plate
    private const double Ninety = 1.645;
    private const double Unlikely = 4;                  // standard deviations
    private const double Worth = 0.04;                  // part of the mean: less is drift

    private readonly BalanceBook _book;
    private readonly MeterSettings _meter;
    private readonly SortedDictionary<int, Condition> _conditions = [];
    private readonly Dictionary<int, BalanceRound> _lastRounds = [];
    private readonly Dictionary<string, int> _timesTurned = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<TurnOutcome> _outcomes = [];
    private readonly List<UnnotedChange> _unnoted = [];
    private readonly HashSet<(int Condition, int Barrel)> _still = [];
    private bool _readOnStops;
    private double[]? _onStops;
    private readonly List<(Turned Turn, bool RodsOff, Dictionary<int, (double Level, double Variance)> Before)> _open = [];

    /// <summary>Runs through a book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="meter">What the meter has shown to be good to.</param>
    public InfluenceModel(BalanceBook book, MeterSettings meter)
    {
        (_book, _meter) = (book, meter);
        foreach (var step in book.Steps)
        {
            Take(step);
        }
    }

    /// <summary>Whether the rods are off now.</summary>
    public bool RodsOff { get; private set; }

    /// <summary>What is known at idle; null before a round was read.</summary>
    public Condition? Idle => _conditions.GetValueOrDefault(0);

    /// <summary>Idle levels of all barrels with every carburettor on its own stop, kg/h; null where that was not read.</summary>
    public IReadOnlyList<double>? OnStops => RodsOff ? (_readOnStops ? Levels(Idle) : null) : _onStops;

    /// <summary>Held speeds with what is known there, lowest first.</summary>
    public IEnumerable<Condition> Held => _conditions.Where(c => c.Key > 0).Select(c => c.Value);

    /// <summary>What came of turns at idle.</summary>
    public IReadOnlyList<TurnOutcome> Outcomes => _outcomes;

    /// <summary>Barrels that read otherwise in the last round of a condition though nothing noted would have moved them.</summary>
    public IReadOnlyList<UnnotedChange> Unnoted => _unnoted;

    /// <summary>Gains of what was turned, as learned.</summary>
    public IReadOnlyList<LearnedGain> Gains =>
    [
        .. from condition in _conditions.Values
           from adjuster in _book.Plan.Adjusters
           where _timesTurned.ContainsKey(adjuster.Key) && condition.Nominal.Own(adjuster) > 0
           let learned = condition.Learned(adjuster)
           select new LearnedGain(adjuster, condition.HeldRpm, learned.Gain, Ninety * Math.Sqrt(learned.Variance), condition.Nominal.Own(adjuster), _timesTurned[adjuster.Key]),
    ];

    /// <summary>Which condition a round belongs to.</summary>
    /// <param name="heldRpm">Speed held; null for idle.</param>
    /// <returns>The speed in steps of 250 rpm; zero for idle.</returns>
    public static int Key(double? heldRpm) => heldRpm is { } rpm ? Math.Max(1, (int)Math.Round(rpm / 250)) * 250 : 0;

    private void Take(BalanceStep step)
    {
        if (step is Turned or RodsTakenOff or RodsPutBack or CheckedFor { Found: true })
        {
            _still.Clear();
        }

        switch (step)
        {
            case RoundRead read:
                Take(read.Round);
                break;
            case Turned turned when _book.Plan.Find(turned.Adjuster) is { } adjuster:
                Take(turned, adjuster);
                break;
            case RodsTakenOff or RodsPutBack:
                _onStops = OnStops?.ToArray();
                (RodsOff, _readOnStops) = (step is RodsTakenOff, false);
                _open.Clear();
                Loosen(Idle, RodsMove * RodsMove);
                break;
            case CheckedFor { Found: true }:
                _open.Clear();
                _onStops = null;
                foreach (var condition in _conditions.Values)
                {
                    Loosen(condition, condition.Mean * condition.Mean);
                }

                break;
            default:
                break;
        }
    }

    private static double[] Levels(Condition? condition) => [.. (condition?.Rows ?? []).Select(r => r.Level)];

    private void Take(Turned turned, Adjuster adjuster)
    {
        TurnOnStops(turned, adjuster);
        _timesTurned[adjuster.Key] = _timesTurned.GetValueOrDefault(adjuster.Key) + 1;
        if (Idle is { } idle && idle.Nominal.Own(adjuster) > 0)
        {
            _open.Add((turned, RodsOff, adjuster.Barrels.ToDictionary(b => b, b => (idle.Rows[b - 1].Level, idle.Rows[b - 1].LevelVariance))));
        }

        if (!RodsOff && adjuster.Kind is AdjusterKind.LinkRod or AdjusterKind.BankRod)
        {
            Loosen(Idle, HoldsMore * HoldsMore);
        }

        foreach (var condition in _conditions.Values)
        {
            var held = condition.IsIdle && !RodsOff && adjuster.Kind == AdjusterKind.StopScrew && _book.Plan.Layout == PlanLayout.TwoBanks;
            var unsure = held ? HeldTurnUnsure * turned.Turns : TurnUnsure;
            foreach (var row in condition.Rows)
            {
                row.Turn(condition.Place(adjuster), turned.Turns, unsure * unsure);
            }
        }
    }

    // a stop or a by-pass moves what a carburettor would pass on its stop, whatever its rod does
    private void TurnOnStops(Turned turned, Adjuster adjuster)
    {
        for (var b = 0; Idle is { } idle && idle.Nominal.Own(adjuster) > 0 && b < (_onStops?.Length ?? 0); b++)
        {
            _onStops![b] += turned.Turns * idle.Rows[b].Gain(idle.Place(adjuster));
        }
    }

    private void Take(BalanceRound round)
    {
        var readings = RoundCorrection.Of(round, _meter).Where(c => c.Barrel >= 1 && c.Barrel <= _book.Plan.Barrels.Count).ToList();
        if (readings.Count == 0 || RoundFaults.Void(round, _book).Length > 0)
        {
            return;
        }

        var key = Key(round.HeldRpm);
        if (!_conditions.TryGetValue(key, out var condition))
        {
            _conditions[key] = condition = new Condition(_book.Plan, round.HeldRpm, readings.Average(r => r.Air));
        }

        _readOnStops |= RodsOff && key == 0;
        Age(condition, key, round);
        Judge(condition, readings);
        FollowUnnoted(condition, key, readings);
        foreach (var reading in readings)
        {
            _still.Add((key, reading.Barrel));
            condition.Rows[reading.Barrel - 1].Read(reading.Air, reading.Variance);
        }
    }

    // somebody turned and did not note it, or something let go: what was known before counts no more
    private void FollowUnnoted(Condition condition, int key, List<CorrectedReading> readings)
    {
        _unnoted.RemoveAll(u => u.HeldRpm == condition.HeldRpm);
        foreach (var reading in readings.Where(r => _still.Contains((key, r.Barrel))))
        {
            var row = condition.Rows[reading.Barrel - 1];
            var off = Math.Abs(reading.Air - row.Level);
            if (off > Worth * condition.Mean && off > Unlikely * Math.Sqrt(row.LevelVariance + reading.Variance))
            {
                _unnoted.Add(new UnnotedChange(reading.Barrel, condition.HeldRpm, row.Level, reading.Air));
                row.Loosen(condition.Mean * condition.Mean);
            }
        }
    }

    private void Age(Condition condition, int key, BalanceRound round)
    {
        var noise = RoundNoise * condition.Mean;
        Loosen(condition, noise * noise);
        if (_lastRounds.TryGetValue(key, out var last) && (Differ(Speed(last), Speed(round), SpeedChange) || Differ(last.OilCelsius, round.OilCelsius, OilChange)))
        {
            foreach (var row in condition.Rows)
            {
                row.Loosen(ChangedPart * condition.Mean * ChangedPart * condition.Mean, GainsLooser);
            }
        }

        condition.Rpm = Speed(round) ?? condition.Rpm;
        _lastRounds[key] = round;
    }

    // what a turn did, once all its barrels are read and nothing else that moves them was turned meanwhile
    private void Judge(Condition condition, List<CorrectedReading> readings)
    {
        if (!condition.IsIdle)
        {
            return;
        }

        var read = readings.ToDictionary(r => r.Barrel);
        foreach (var (turn, off, before) in _open.Where(o => o.Before.Keys.All(read.ContainsKey)).ToList())
        {
            var adjuster = _book.Plan.Find(turn.Adjuster)!;
            var others = _open.Any(o => o.Turn != turn && o.Before.Keys.Any(before.ContainsKey));
            if (!others)
            {
                var got = before.Average(b => read[b.Key].Air - b.Value.Level);
                var deviation = Math.Sqrt(before.Average(b => read[b.Key].Variance + b.Value.Variance) / before.Count);
                _outcomes.Add(new TurnOutcome(adjuster, turn.Turns, off, turn.Turns * condition.Nominal.Own(adjuster), got, deviation));
            }
        }

        _open.RemoveAll(o => o.Before.Keys.All(read.ContainsKey));
    }

    private static void Loosen(Condition? condition, double variance)
    {
        foreach (var row in condition?.Rows ?? [])
        {
            row.Loosen(variance);
        }
    }

    private static double? Speed(BalanceRound round) => round.Readings.Average(r => r.Rpm);

    private static bool Differ(double? a, double? b, double by) => Math.Abs((a - b) ?? 0) > by;
}
