using System.Globalization;
using Tickover.Practice.Virtual;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Visits;

namespace Tickover.Practice;

/// <summary>A virtual engine to practise balancing on: it is turned and read like a real one, and hides its truth until the end.</summary>
/// <remarks>The same plan, seed, difficulty and acts give the same answers. It knows nothing of how advice is reached. Not safe for several threads.</remarks>
public sealed class PracticeEngine
{
    /// <summary>The hardest difficulty: two faults, a worse meter, an engine not yet hot.</summary>
    public const int Hardest = 3;

    /// <summary>All that can be read of a barrel; engine speed is noted with every reading.</summary>
    public const ReadKinds AllKinds = ReadKinds.Air | ReadKinds.Vacuum | ReadKinds.Lambda | ReadKinds.Header;

    private const double MinutesToHold = 0.5;
    private const int MostBarrels = 24;
    private readonly VirtualEngine _engine;
    private readonly IReadOnlyList<HiddenFault> _faults;
    private readonly Meter _meter;
    private readonly Drift _drift;
    private readonly Dice _hand;
    private readonly Dice _rest;
    private readonly Tally _tally = new();
    private readonly List<BalanceStep> _steps = [];

    private PracticeEngine(VirtualEngine engine, IReadOnlyList<HiddenFault> faults, int seed, int difficulty)
    {
        _engine = engine;
        _faults = faults;
        _meter = new Meter(seed, difficulty);
        _drift = new Drift(seed, difficulty);
        _hand = new Dice(seed, "hand");
        _rest = new Dice(seed, "rest");
    }

    /// <summary>What stands on the engine and can be turned.</summary>
    public EnginePlan Plan => _engine.Plan;

    /// <summary>Whether rods are off (of two constant-depression carburettors: the clamp slackened).</summary>
    public bool RodsAreOff => _engine.Linkage.Apart;

    /// <summary>Minutes of work so far.</summary>
    public double Minutes => _tally.Minutes;

    /// <summary>All that was done and read so far, in order.</summary>
    public IReadOnlyList<BalanceStep> Steps => _steps;

    /// <summary>Whether the engine was handed over: nothing more can be done.</summary>
    public bool Finished { get; private set; }

    /// <summary>Makes an engine.</summary>
    /// <param name="plan">What stands on it.</param>
    /// <param name="seed">Which car of this kind: any number.</param>
    /// <param name="difficulty">0 healthy and out of adjustment, 1 one hidden fault, 2 two, 3 two with a worse meter and an engine not yet hot.</param>
    /// <returns>The engine, running, rods on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The difficulty is not from 0 to 3.</exception>
    public static PracticeEngine Start(EnginePlan plan, int seed, int difficulty)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentOutOfRangeException.ThrowIfNegative(difficulty);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(difficulty, Hardest);
        var dice = new Dice(seed, "car");
        var kinds = FaultMaker.Draw(plan, Math.Min(difficulty, 2), new Dice(seed, "faults"));
        var engine = EngineBuilder.Build(plan, dice, kinds.Any(FaultMaker.IsRod) ? Sizes.RodsNearlyRight : Sizes.RodsOut);
        var part = dice.Between(Sizes.IdleSpeedOut.Low, Sizes.IdleSpeedOut.High);
        EngineBuilder.SetIdle(engine, part);
        var sizes = new Dice(seed, "sizes");
        var faults = kinds.Select(k => FaultMaker.Hide(engine, k, sizes)).ToList();
        EngineBuilder.SetIdle(engine, part);
        return new(engine, faults, seed, difficulty);
    }

    /// <summary>Turns something.</summary>
    /// <param name="key">Its key in the plan, such as "stop:2".</param>
    /// <param name="turns">Turns, positive as the plan counts (opens, or richer); taken to the nearest step a person turns by.</param>
    /// <returns>What was turned, which is less where it came to its end; or why nothing was.</returns>
    public PracticeAnswer Turn(string key, double turns)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (Refused() is { } no)
        {
            return no;
        }

        if (Plan.Find(key) is not { } adjuster || !_engine.Screws.TryGetValue(key, out var screw))
        {
            return PracticeAnswer.No($"There is no '{key}' on this engine. What can be turned: {string.Join(", ", _engine.Screws.Keys)}.");
        }

        if (!(Math.Abs(turns) <= adjuster.TravelTurns * 2) || Math.Abs(turns) * adjuster.StepsATurn < 0.5)
        {
            return PracticeAnswer.No(string.Create(CultureInfo.InvariantCulture, $"{turns} is no turn of the {adjuster.Thing}: by steps of 1/{adjuster.StepsATurn} turn, {adjuster.TravelTurns:0.#} turns from end to end."));
        }

        var turned = screw.Turn(turns, _hand);
        Pass(Tally.MinutesAMove);
        if (turned == 0)
        {
            return PracticeAnswer.No($"{adjuster.Where}: the {adjuster.Thing} is at its end and goes no further {(turns > 0 ? adjuster.More : adjuster.Less)}.");
        }

        _tally.Moves++;
        return Step(new Turned(adjuster.Key, turned), TurnWords.Of(adjuster, turned));
    }

    /// <summary>Takes all rods off, so that every carburettor rests on its own stop.</summary>
    /// <returns>That it was done, or why not.</returns>
    public PracticeAnswer RodsOff() => Rods(apart: true);

    /// <summary>Puts all rods back as they are.</summary>
    /// <returns>That it was done, or why not.</returns>
    public PracticeAnswer RodsOn() => Rods(apart: false);

    /// <summary>Offers a rod to its ball, with rods off.</summary>
    /// <param name="key">Key of the rod, such as "rod:2", "bankrod" or "clamp".</param>
    /// <returns>How much it is too long (+) or too short (−), mm; or why that cannot be seen.</returns>
    public PracticeAnswer OfferRod(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (Refused() is { } no)
        {
            return no;
        }

        if (RodLook.Ends(Plan, key) is not { } ends)
        {
            return PracticeAnswer.No($"There is no rod '{key}' on this engine.");
        }

        if (!RodsAreOff)
        {
            return PracticeAnswer.No("A rod can be offered to its ball only with the rods off. Take them off first.");
        }

        Handle(Tally.MinutesALook);
        var gap = RodLook.TooLong(_engine, ends, _hand);
        return Step(new LookedAt(Plan.Find(key)!.Key, gap), RodLook.Words(gap));
    }

    /// <summary>Looks whether a stop touches, by a thin strip.</summary>
    /// <param name="key">Key of the stop screw, such as "stop:2".</param>
    /// <returns>The gap, mm, 0 where it touches; or why there is nothing to see.</returns>
    public PracticeAnswer LookAtStop(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (Refused() is { } no)
        {
            return no;
        }

        var one = _engine.Carburettors.FirstOrDefault(c => string.Equals(c.Stop?.Key, key, StringComparison.OrdinalIgnoreCase));
        if (one is null)
        {
            return PracticeAnswer.No($"There is no stop '{key}' on this engine. Stops: {string.Join(", ", _engine.Carburettors.Select(c => c.Stop?.Key).OfType<string>())}.");
        }

        Handle(Tally.MinutesALook);
        var gap = RodLook.StopGap(_engine, one, _hand);
        return Step(new LookedAt(one.Stop!.Key, gap), gap > 0 ? string.Create(CultureInfo.InvariantCulture, $"The stop does not touch: {gap:0.00} mm.") : "The stop touches.");
    }

    /// <summary>Reads every barrel in order, the first again last.</summary>
    /// <param name="heldRpm">Speed held by the cross-shaft, rpm; null at idle.</param>
    /// <param name="what">What is read.</param>
    /// <returns>The round, or why there is none.</returns>
    public PracticeAnswer ReadRound(double? heldRpm, ReadKinds what)
    {
        if ((Refused() ?? Unreadable(heldRpm)) is { } no)
        {
            return no;
        }

        if (Several([.. Plan.Barrels.Select(b => b.Number), Plan.Barrels[0].Number], heldRpm, what) is not { } readings)
        {
            return PracticeAnswer.No(Refusal.Stalls(heldRpm));
        }

        _tally.Rounds++;
        return Step(
            new RoundRead(Taken(heldRpm, readings[..^1]) with { Again = readings[^1] }),
            heldRpm is null ? "A round at idle." : string.Create(CultureInfo.InvariantCulture, $"A round at {heldRpm:0} rpm."));
    }

    /// <summary>Reads one barrel.</summary>
    /// <param name="barrel">Number of the barrel.</param>
    /// <param name="heldRpm">Speed held by the cross-shaft, rpm; null at idle.</param>
    /// <param name="what">What is read.</param>
    /// <returns>The reading, or why there is none.</returns>
    public PracticeAnswer ReadBarrel(int barrel, double? heldRpm, ReadKinds what) => ReadBarrels([barrel], heldRpm, what);

    /// <summary>Reads some barrels, such as those a turn has moved.</summary>
    /// <param name="barrels">Numbers of the barrels in the order read; one twice is read twice.</param>
    /// <param name="heldRpm">Speed held by the cross-shaft, rpm; null at idle.</param>
    /// <param name="what">What is read.</param>
    /// <returns>A part of a round, and of one barrel its reading; or why there is none.</returns>
    public PracticeAnswer ReadBarrels(IReadOnlyList<int> barrels, double? heldRpm, ReadKinds what)
    {
        ArgumentNullException.ThrowIfNull(barrels);
        if ((Refused() ?? Unreadable(heldRpm) ?? Unknown(barrels)) is { } no)
        {
            return no;
        }

        if (Several(barrels, heldRpm, what) is not { } readings)
        {
            return PracticeAnswer.No(Refusal.Stalls(heldRpm));
        }

        _tally.SingleReadings += readings.Count;
        var words = readings.Count == 1 ? $"Barrel {readings[0].Barrel}." : $"Barrels {string.Join(", ", barrels)}.";
        return Step(new RoundRead(Taken(heldRpm, readings)), words) with { Reading = readings.Count == 1 ? readings[0] : null };
    }

    /// <summary>Names a fault and has it mended.</summary>
    /// <param name="place">What and where.</param>
    /// <returns>Whether it was there; either way the work takes its time.</returns>
    public PracticeAnswer Repair(FaultPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        if (Refused() is { } no)
        {
            return no;
        }

        if (RepairWork.Unknown(Plan, place) is { } words)
        {
            return PracticeAnswer.No(words);
        }

        Pass(RepairWork.Minutes(place.Fault));
        var fault = _faults.FirstOrDefault(f => !f.Mended && RepairWork.Same(f.Place, place));
        if (fault is not null)
        {
            fault.Undo();
            fault.Mended = true;
            return Step(new CheckedFor(place, Found: true), $"It was there ({fault.Size}) and is mended: {fault.Place}.");
        }

        _tally.NamedWrong++;
        return Step(new CheckedFor(place, Found: false), $"Looked at and found in order: {place}.");
    }

    /// <summary>Hands the engine over: nothing can be done after it.</summary>
    /// <returns>The score; or that the rods are still off.</returns>
    public PracticeAnswer Finish()
    {
        if (Refused() is { } no)
        {
            return no;
        }

        if (RodsAreOff)
        {
            return PracticeAnswer.No("The rods are still off. Put them back first.");
        }

        Finished = true;
        return new() { Done = true, Words = "Handed over.", Score = _tally.Score(Truth(), RepairWork.Found(_faults)) };
    }

    /// <summary>What is true of the engine as it stands. For studies and for the end of a lesson only.</summary>
    /// <returns>The truth.</returns>
    public PracticeTruth Truth() => TruthOf.Engine(_engine, _faults);

    private PracticeAnswer Rods(bool apart)
    {
        if (Refused() is { } no)
        {
            return no;
        }

        if (_engine.Carburettors.Count(c => c.Stop is not null) < 2)
        {
            return PracticeAnswer.No("The carburettors of this engine have no stops of their own; what joins them stays on.");
        }

        if (RodsAreOff == apart)
        {
            return PracticeAnswer.No(apart ? "The rods are off already." : "The rods are on already.");
        }

        _engine.Linkage.Apart = apart;
        Handle(Tally.MinutesForRods);
        return apart ? Step(new RodsTakenOff(), "Rods off: every carburettor on its own stop.") : Step(new RodsPutBack(), "Rods back on as they are.");
    }

    private PracticeAnswer? Refused() => Finished ? PracticeAnswer.No("This engine was handed over. Start another.") : null;

    private PracticeAnswer? Unreadable(double? heldRpm) => Refusal.OfHeld(Plan, heldRpm, RodsAreOff) is { } why ? PracticeAnswer.No(why) : null;

    // null as soon as the engine stalls
    private List<BarrelReading>? Several(IReadOnlyList<int> barrels, double? heldRpm, ReadKinds what)
    {
        var readings = barrels.Select(b => One(b, heldRpm, what)).TakeWhile(r => r is not null).OfType<BarrelReading>().ToList();
        return readings.Count == barrels.Count ? readings : null;
    }

    private BarrelReading? One(int barrel, double? heldRpm, ReadKinds what)
    {
        const double Wander = 20;
        Pass(Tally.MinutesToRead(what) + (heldRpm is null ? 0 : MinutesToHold / Plan.Barrels.Count));
        _engine.Friction = _drift.Friction;
        for (var i = 0; i < _engine.Unrest.Length; i++)
        {
            _engine.Unrest[i] = _rest.Normal(_engine.Carburettors[i].Unrest);
        }

        var state = heldRpm is null ? _engine.Idle() : _engine.Held(heldRpm.Value + _rest.Between(-Wander, Wander));
        return state is null ? null : _meter.Read(_engine, state, barrel, what);
    }

    private PracticeAnswer? Unknown(IReadOnlyList<int> barrels)
    {
        var strange = barrels.Where(b => Plan.Barrels.All(p => p.Number != b)).ToList();
        return strange.Count > 0 ? PracticeAnswer.No(string.Create(CultureInfo.InvariantCulture, $"There is no barrel {strange[0]}; this engine has {Plan.Barrels.Count}."))
            : barrels.Count is 0 or > MostBarrels ? PracticeAnswer.No(string.Create(CultureInfo.InvariantCulture, $"Read from 1 to {MostBarrels} barrels at a time.")) : null;
    }

    private BalanceRound Taken(double? heldRpm, IReadOnlyList<BarrelReading> readings) => new()
    {
        Number = _steps.OfType<RoundRead>().Count() + 1,
        HeldRpm = heldRpm,
        Moment = _tally.Moves == 0 ? Moment.AsFound : Moment.Working,
        RodsOff = RodsAreOff,
        OilCelsius = Math.Round(_drift.Oil),
        Readings = readings,
    };

    private void Handle(double minutes)
    {
        _tally.Handling++;
        Pass(minutes);
    }

    private void Pass(double minutes)
    {
        _tally.Minutes += minutes;
        _drift.Pass(minutes);
    }

    private PracticeAnswer Step(BalanceStep step, string words)
    {
        _steps.Add(step);
        return new() { Done = true, Words = words, Step = step };
    }
}
