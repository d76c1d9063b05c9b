using Tickover.Workshop.Balance.Advising.Mixture;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>Decides the next thing to do: barrel, carburettor, bank, banks, off idle, and again where it moved (reference, 2.6 to 2.10).</summary>
internal sealed class Adviser
{
    private const double WorthALook = 0.02;
    private const double Certain = 2;                       // standard deviations from the limit
    private const double Coarse = 0.22;                     // of the limit: what one reading is known to on a small barrel
    private const double SureEnough = 0.6;
    private const double SureEnoughToStrip = 0.75;
    private const double WorthReseating = 0.2;              // a meter is put on again in three minutes
    private const double WorthMeasuring = 0.4;              // a strobe or a protractor takes a quarter of an hour
    private const double RodSlack = 0.22;                   // mm a rod may be off: within its play, and some 3 % of the air off idle
    private const double BankRodSlack = 0.12;               // mm: banks may differ by less than barrels
    private const double RodMillimetresATurn = 0.8;
    private const double ClampMillimetresATurn = 1.3;       // at the fork, 25 mm out

    private static readonly BalanceFault[] Stripping = [BalanceFault.PlateSeating, BalanceFault.TwistedSpindle];
    private static readonly BalanceFault[] Turnable = [BalanceFault.RodLength, BalanceFault.StopNotTouching];

    private readonly double[] _heldSpeeds;
    private readonly BalanceBook _book;
    private readonly InfluenceModel _model;
    private readonly Freshness _fresh;
    private readonly AdviceWords _words;
    private readonly IReadOnlyList<(FaultPlace Fault, double Probability)> _causes;
    private readonly double _onlyScrews;
    private readonly MeterSettings _meter;
    private readonly IdleMixture _mixture;
    private bool _isBalanced;

    /// <summary>Begins.</summary>
    /// <param name="book">The book.</param>
    public Adviser(BalanceBook book)
    {
        _book = book;
        _heldSpeeds = HeldAt(book.Plan.Layout);
        _meter = Repeats.Learn(book);
        _model = new InfluenceModel(book, _meter);
        _fresh = new Freshness(book);
        (_causes, _onlyScrews) = new FaultFinder(book, _model, _meter).Rank();
        _words = new AdviceWords(book, _model);
        _mixture = new IdleMixture(book);
    }

    /// <summary>The advice.</summary>
    /// <returns>Rounds, causes and the next thing to do.</returns>
    public BalanceAdvice Advise()
    {
        var rounds = RoundAccounts.Of(_book, _meter);
        var next = rounds.Count > 0 && rounds[^1].IsVoid ? AdviceWords.Again(rounds[^1]) : Next();
        return new BalanceAdvice
        {
            Rounds = rounds,
            Next = next,
            Causes = [.. _causes.Select(c => new LikelyCause(c.Fault, c.Probability, FaultWords.What(c.Fault, _book.Plan), FaultWords.Check(c.Fault)))],
            OnlyScrews = _onlyScrews,
            Repeatability = _meter.AirDeviation(_model.Idle?.Mean ?? 0),
            Gains = _model.Gains,
            IsBalanced = _isBalanced,
            Remarks = [.. _model.Outcomes.Where(o => o.DidNothing).Select(AdviceWords.DidNothing), .. AdviceWords.Unnoted(_model.Unnoted), .. _mixture.Remarks],
            Said = _words.Said(next),
        };
    }

    private NextMove Next() => FirstReadings() ?? Faults() ?? (_model.RodsOff ? RodsOff() : RodsOn());

    private NextMove? FirstReadings()
    {
        if (_fresh.Stale(0) is { Count: > 0 } idle)
        {
            return _words.Read(null, idle, FirstKinds());
        }

        if (_fresh.AnythingTurned() || _model.RodsOff)
        {
            return null;
        }

        var held = _heldSpeeds.Where(h => _fresh.Stale(InfluenceModel.Key(h)).Count > 0).Select(h => (double?)h).FirstOrDefault();
        return held is { } rpm ? _words.Read(rpm, [], ReadKinds.Air) : null;
    }

    // vacuum and the rest are asked for once, with the first round
    private ReadKinds FirstKinds() => ReadKinds.Air | (_fresh.WasRead(ReadKinds.Air) ? ReadKinds.None : _meter.Available);

    private NextMove? Faults()
    {
        if (_fresh.IsProved(0) && _causes.Count > 0)
        {
            var (fault, probability) = _causes[0];
            var asked = fault.Fault == BalanceFault.MeterSeal ? WorthReseating : fault.Fault is BalanceFault.LeverAngle or BalanceFault.BankTiming ? WorthMeasuring : Stripping.Contains(fault.Fault) ? SureEnoughToStrip : SureEnough;
            if (!Turnable.Contains(fault.Fault) && probability >= asked)
            {
                return _words.Repair(fault, probability);
            }
        }

        return null;
    }

    private NextMove RodsOn()
    {
        var idle = Plan([_model.Idle!]);
        if (ReadTwice(idle, null) is { } again)
        {
            return again;
        }

        return AtIdle(idle) ?? OffIdle() ?? Proof() ?? Balanced();
    }

    // air alike everywhere: only now is there any sense in the mixture, and after it in the speed
    private NextMove Balanced()
    {
        _isBalanced = true;
        return _mixture.Next() ?? _words.Done(_model.Idle!);
    }

    // carburettors on stops of their own are levelled with the rods off; a plate that a rod holds is shown by its stop
    private NextMove? AtIdle(MovePlan idle)
    {
        if (idle.Turns.Count == 0 || !StandsApart || idle.Turns.All(t => t.Adjuster.Kind != AdjusterKind.StopScrew))
        {
            return idle.Turns.Count == 0 ? null : _words.Turn(_model.Idle!, idle);
        }

        return !WasOff() ? SuspectedStop() ?? _words.TakeRodsOff(idle)
            : Looked(idle.Turns[0].Adjuster) is not { } look ? AdviceWords.Look(idle.Turns[0].Adjuster)
            : look.Gap <= 0.02 ? _words.Turn(_model.Idle!, idle)
            : PlatesAtRest.Of(_book.Plan, _model) is null ? _words.ShortenRod(idle.Turns[0].Adjuster, look.Gap)
            : null;
    }

    // before the rods come off, whatever stop may not touch is looked at
    private NextMove? SuspectedStop() => _causes.Where(c => c.Fault.Fault == BalanceFault.StopNotTouching && c.Probability > WorthALook)
        .Select(c => _book.Plan.Find(FormattableString.Invariant($"stop:{c.Fault.Place}"))).FirstOrDefault(s => s is not null && Looked(s) is null) is { } stop ? AdviceWords.Look(stop) : null;

    // each carburettor on a stop of its own, so that rods or clamp come off before they are levelled
    private bool StandsApart => _book.Plan.Layout is PlanLayout.TwoBanks or PlanLayout.ConstantDepression;

    // as the trade judges each layout: two off-idle speeds where rods open the plates, one where they are few or small
    private static double[] HeldAt(PlanLayout layout) => layout switch
    {
        PlanLayout.ConstantDepression => [1500],
        PlanLayout.MotorcycleFour => [3000],
        _ => [1500, 2500],
    };

    private bool WasOff() => _book.Steps.Any(s => s is RodsTakenOff);

    private LookedAt? Looked(Adjuster stop)
    {
        var last = _book.Steps.ToList().FindLastIndex(s => s is LookedAt l && string.Equals(l.What, stop.Key, StringComparison.OrdinalIgnoreCase));
        return last >= 0 && !_book.Steps.Skip(last).Any(s => s is Turned or RodsPutBack or RodsTakenOff) ? (LookedAt)_book.Steps[last] : null;
    }

    private NextMove RodsOff()
    {
        var idle = Plan([_model.Idle!]);
        if (idle.Turns.Count > 0)
        {
            return ReadTwice(idle, null) ?? _words.Turn(_model.Idle!, idle);
        }

        return RodsByOffering() ?? _words.PutRodsBack();
    }

    private NextMove? RodsByOffering()
    {
        foreach (var rod in _book.Plan.Adjusters.Where(IsRod))
        {
            if (Offered(rod) is not { } gap)
            {
                return _words.Offer(rod);
            }

            var turns = Math.Round(-gap / (rod.Kind == AdjusterKind.CouplingScrew ? ClampMillimetresATurn : RodMillimetresATurn) * rod.StepsATurn) / rod.StepsATurn;
            if (!_model.Held.Any() && Math.Abs(gap) > (rod.Kind == AdjusterKind.LinkRod ? RodSlack : BankRodSlack) && turns != 0 && !TurnedSinceOffered(rod))
            {
                return AdviceWords.TurnRod(rod, turns, gap);
            }
        }

        // held readings show a rod better than the eye does: what is in the linkage counts there, whatever the stops
        var plan = _model.Held.Any() ? RodPlan() : null;
        return plan?.Turns.Count > 0 ? _words.Turn(_model.Held.First(), plan) : null;
    }

    private bool IsRod(Adjuster adjuster) => adjuster.Kind is AdjusterKind.LinkRod or AdjusterKind.BankRod || (adjuster.Kind == AdjusterKind.CouplingScrew && _book.Plan.Layout == PlanLayout.ConstantDepression);

    private double? Offered(Adjuster rod) => SinceOff().OfType<LookedAt>().LastOrDefault(l => string.Equals(l.What, rod.Key, StringComparison.OrdinalIgnoreCase))?.Gap;

    private bool TurnedSinceOffered(Adjuster rod) =>
        SinceOff().Reverse().TakeWhile(s => s is not LookedAt l || !string.Equals(l.What, rod.Key, StringComparison.OrdinalIgnoreCase)).OfType<Turned>().Any(t => string.Equals(t.Adjuster, rod.Key, StringComparison.OrdinalIgnoreCase));

    private IEnumerable<BalanceStep> SinceOff() => _book.Steps.Skip(_book.Steps.ToList().FindLastIndex(s => s is RodsTakenOff));

    private NextMove? OffIdle()
    {
        foreach (var rpm in _heldSpeeds)
        {
            if (_fresh.Stale(InfluenceModel.Key(rpm)).Count > 0)
            {
                return _words.Read(rpm, [], ReadKinds.Air);
            }
        }

        var plan = RodPlan();
        return _heldSpeeds.Select(h => ReadTwice(plan, h)).FirstOrDefault(r => r is not null) ?? (plan.Turns.Count > 0 ? _words.Turn(_model.Held.First(), plan) : null);
    }

    // so near the limit that one reading cannot tell: another costs less than a turn that was not needed
    private NextMove? ReadTwice(MovePlan plan, double? heldRpm) =>
        plan.WorstNow > 1 - (Certain * plan.Doubt) && plan.WorstNow < 1 + (Certain * plan.Doubt) && _fresh.Proofs(InfluenceModel.Key(heldRpm)) is > 0 and var read && read < (plan.Doubt > Coarse ? 3 : 2) ? _words.ReadTwice(heldRpm) : null;

    private NextMove? Proof()
    {
        foreach (var rpm in (double?[])[null, .. _heldSpeeds.Select(h => (double?)h)])
        {
            if (!_fresh.IsProved(InfluenceModel.Key(rpm)))
            {
                return _words.Read(rpm, [], ReadKinds.Air);
            }
        }

        return null;
    }

    private MovePlan Plan(IReadOnlyList<Condition> conditions) => new MovePlanner(conditions, _book.Limits, Usable, WithinTravel).Make();

    // what was turned and not yet read again is left: nothing new is known of it
    private MovePlan RodPlan() => new MovePlanner([.. _model.Held], _book.Limits, a => Usable(a) && !(_model.RodsOff && TurnedSinceOff(a)), WithinTravel, PlatesAtRest.Of(_book.Plan, _model)).Make();

    private bool TurnedSinceOff(Adjuster adjuster) => SinceOff().OfType<Turned>().Any(t => string.Equals(t.Adjuster, adjuster.Key, StringComparison.OrdinalIgnoreCase));

    private bool Usable(Adjuster adjuster) => !_causes.Any(c => c.Fault.Fault == BalanceFault.DeadScrew && string.Equals(c.Fault.Screw, adjuster.Key, StringComparison.OrdinalIgnoreCase) && c.Probability > SureEnough);

    // what is known of a screw's travel is what was turned here: never further than its whole travel from where it was found
    private double WithinTravel(Adjuster adjuster, double turns)
    {
        var sofar = _book.Steps.OfType<Turned>().Where(t => string.Equals(t.Adjuster, adjuster.Key, StringComparison.OrdinalIgnoreCase)).Sum(t => t.Turns);
        var low = adjuster.Kind == AdjusterKind.BypassScrew ? -Math.Max(sofar, 0) : -adjuster.TravelTurns - sofar;
        return Math.Clamp(turns, low, Math.Max(low, adjuster.TravelTurns - sofar));
    }
}
