using System.Globalization;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>Puts the next thing to do into the words said aloud, with what to expect of it.</summary>
internal sealed class AdviceWords
{
    private const double Ninety = 1.645;
    private const double StopLever = 26;                    // mm; common practice
    private const double RodLever = 55;                     // mm; common practice
    private const double RodMillimetresATurn = 0.8;
    private const double ALittle = 0.3;                     // of the limit
    private readonly BalanceBook _book;
    private readonly InfluenceModel _model;

    /// <summary>Begins.</summary>
    /// <param name="book">The book.</param>
    /// <param name="model">What was learned of turns.</param>
    public AdviceWords(BalanceBook book, InfluenceModel model) => (_book, _model) = (book, model);

    private EnginePlan Plan => _book.Plan;

    /// <summary>A screw that did not do what it should.</summary>
    /// <param name="outcome">The turn and what came of it.</param>
    /// <returns>A sentence.</returns>
    public static string DidNothing(TurnOutcome outcome) =>
        Line($"{outcome.Adjuster.Where}, {outcome.Adjuster.Thing}: {MoveWords.Short(outcome.Adjuster, outcome.Turns)} should have moved {Math.Abs(outcome.Expected):0.0} kg/h and moved {outcome.Got:+0.0;−0.0;0.0} ±{Ninety * outcome.Deviation:0.0}. Not trusted until it is looked at.");

    /// <summary>Barrels that read otherwise though nothing is noted.</summary>
    /// <param name="changes">The barrels.</param>
    /// <returns>One sentence for each condition.</returns>
    public static IEnumerable<string> Unnoted(IReadOnlyList<UnnotedChange> changes) =>
        from held in changes.GroupBy(c => c.HeldRpm)
        let barrels = held.Select(c => Line($"{c.Barrel} ({c.Before:0.0} → {c.Now:0.0})"))
        select $"{Speed(held.Key)} these barrels read otherwise than before, kg/h, though nothing is noted between: {string.Join(", ", barrels)}. They count as they read now. Note what is turned: that is how Tickover learns what a turn does.";

    /// <summary>A void round is read again.</summary>
    /// <param name="round">The round.</param>
    /// <returns>The move.</returns>
    public static NextMove Again(RoundAccount round) => new() { Kind = NextKind.Read, Who = Speed(round.Round.HeldRpm), What = "Read the round again", Why = round.Why, HeldRpm = round.Round.HeldRpm, Read = ReadKinds.Air };

    /// <summary>A round, or some barrels, to read.</summary>
    /// <param name="heldRpm">Speed to hold; null for idle.</param>
    /// <param name="barrels">Which barrels; all where empty.</param>
    /// <param name="kinds">What to read.</param>
    /// <returns>The move.</returns>
    public NextMove Read(double? heldRpm, IReadOnlyList<int> barrels, ReadKinds kinds)
    {
        var all = barrels.Count == 0 || barrels.Count > Plan.Barrels.Count / 2;
        var which = all ? "Read every barrel" : $"Read barrel {string.Join(" and ", barrels)}";
        var why = (all, heldRpm) switch
        {
            (false, _) => "Only what was moved need be read again: blip first, let it settle.",
            (_, null) => "Blip first, let it settle, the same order as always, the first barrel again at the end; write the rpm with each.",
            _ => "Held by the cross-shaft, not by the pedal. A linkage shows off idle; plates and by-passes show at idle.",
        };
        return new NextMove { Kind = NextKind.Read, Who = Speed(heldRpm), What = which, Why = why, HeldRpm = heldRpm, Read = kinds, Barrels = all ? [] : barrels };
    }

    /// <summary>A whole round to read a second time.</summary>
    /// <param name="heldRpm">Speed to hold; null for idle.</param>
    /// <returns>The move.</returns>
    public NextMove ReadTwice(double? heldRpm) =>
        Read(heldRpm, [], ReadKinds.Air) with { What = "Read every barrel once more", Why = "It lies so near the limit that one round cannot tell. Another costs less than a turn that was not needed." };

    /// <summary>The first turn of a plan.</summary>
    /// <param name="condition">Where its effect is read.</param>
    /// <param name="plan">The plan.</param>
    /// <returns>The move.</returns>
    public NextMove Turn(Condition condition, MovePlan plan)
    {
        var (adjuster, turns) = plan.Turns[0];
        var mean = condition.Mean;
        var own = adjuster.Barrels.Average(b => condition.Rows[b - 1].Level);
        var why = Line($"{Standing(adjuster, own, mean, condition.IsIdle)} {Learned(condition, adjuster)}");
        return Turning(adjuster, turns, why, Expected(condition, adjuster, turns)) with { HeldRpm = condition.HeldRpm, MovesForeseen = plan.Turns.Count };
    }

    /// <summary>Rods come off before carburettors are levelled.</summary>
    /// <param name="plan">What is to be turned then.</param>
    /// <returns>The move.</returns>
    public NextMove TakeRodsOff(MovePlan plan) => new()
    {
        Kind = NextKind.RodsOff,
        Who = "Engine off",
        What = Plan.Layout == PlanLayout.ConstantDepression ? "Slacken the clamp between the spindles" : "Take the rods off",
        Why = Plan.Layout == PlanLayout.ConstantDepression ? "Each carburettor is set on its own stop; clamped, one carries the other." : "Carburettors stand apart at idle. With the rods on, one may hold another's plates off its stop and its screw then does nothing.",
        MovesForeseen = plan.Turns.Count,
    };

    /// <summary>A rod to offer to its ball.</summary>
    /// <param name="rod">The rod.</param>
    /// <returns>The move.</returns>
    public NextMove Offer(Adjuster rod) => new()
    {
        Kind = NextKind.OfferRod,
        Who = rod.Where,
        What = Plan.Layout == PlanLayout.ConstantDepression ? "Look how the fork stands to its pin" : "Offer the rod to its ball",
        Why = Plan.Layout == PlanLayout.ConstantDepression ? "Both plates on their stops: key in by how many mm the second would be held open (+) or left behind (−)." : "Plates shut on their stops, it must drop on without moving one. Key in by how many mm it is too long (+) or too short (−).",
        Adjuster = rod,
    };

    /// <summary>A rod to turn by what it was found long or short.</summary>
    /// <param name="rod">The rod.</param>
    /// <param name="turns">Turns, positive lengthens.</param>
    /// <param name="gap">How much it is too long, mm.</param>
    /// <returns>The move.</returns>
    public static NextMove TurnRod(Adjuster rod, double turns, double gap) =>
        Turning(rod, turns, Line($"It is {Math.Abs(gap):0.0} mm too {(gap > 0 ? "long" : "short")}: put on like that it would {(gap > 0 ? "hold plates off their stops" : "lag as the throttle opens")}."), []);

    /// <summary>Rods back on.</summary>
    /// <returns>The move.</returns>
    public NextMove PutRodsBack() => new()
    {
        Kind = NextKind.RodsOn,
        Who = "Engine off",
        What = Plan.Layout == PlanLayout.ConstantDepression ? "Tighten the clamp, with the delay it is meant to have" : "Put the rods back on",
        Why = Plan.Layout == PlanLayout.ConstantDepression ? "The pin at the edge of its hole, or some 0.15 mm at the fork. Then read idle again: nothing may have changed." : "All of them drop on without moving a plate. Then read idle again: nothing may have changed.",
    };

    /// <summary>A stop to look at.</summary>
    /// <param name="stop">The stop screw.</param>
    /// <returns>The move.</returns>
    public static NextMove Look(Adjuster stop) => new()
    {
        Kind = NextKind.Look,
        Who = stop.Where,
        What = "Does the stop touch?",
        Why = "It reads otherwise than before the rods went back. Slip paper between screw and lever: key in the gap, 0 where it is gripped.",
        Adjuster = stop,
    };

    /// <summary>A rod that holds plates off their stop is shortened.</summary>
    /// <param name="stop">The stop that does not touch.</param>
    /// <param name="gap">Its gap, mm.</param>
    /// <returns>The move.</returns>
    public NextMove ShortenRod(Adjuster stop, double gap)
    {
        var rods = Plan.Adjusters.Where(a => a.Kind is AdjusterKind.LinkRod or AdjusterKind.BankRod or AdjusterKind.CouplingScrew).ToList();
        var rod = rods.Where(a => stop.Barrels.All(a.Barrels.Contains)).MinBy(a => a.Barrels.Count) ?? rods[0];
        var way = stop.Barrels.All(rod.Barrels.Contains) ? -1 : 1;
        var turns = way * Math.Max(1, Math.Round(gap * RodLever / StopLever / RodMillimetresATurn * rod.StepsATurn)) / rod.StepsATurn;
        return Turning(rod, turns, Line($"{stop.Where} stands {gap:0.0} mm off its stop: the rod holds it."), []);
    }

    /// <summary>A fault to look for and put right.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="probability">How likely it is.</param>
    /// <returns>The move.</returns>
    public NextMove Repair(FaultPlace fault, double probability) => new()
    {
        Kind = NextKind.Repair,
        Who = FaultWords.Where(fault, Plan),
        What = "Look at this before any screw",
        Why = Line($"{FaultWords.What(fault, Plan)} {100 * probability:0} % likely by these readings. {FaultWords.Check(fault)}"),
        Fault = fault,
    };

    /// <summary>All is within its limit.</summary>
    /// <param name="idle">What is known at idle.</param>
    /// <returns>The move.</returns>
    public NextMove Done(Condition idle)
    {
        var worst = _model.Held.Prepend(idle).Max(c => c.Rows.Max(r => Math.Abs(r.Level - c.Mean)) / _book.Limits.OffMean(c.IsIdle, c.Mean));
        var mixture = (_book.Meter.Available & (ReadKinds.Lambda | ReadKinds.Speed | ReadKinds.BankGas)) != ReadKinds.None;
        return new()
        {
            Kind = NextKind.Done,
            Who = "All barrels",
            What = worst > 1 ? "As near as these screws go" : mixture ? "Balanced, mixture set" : "Balanced: go on to the mixture",
            Why = worst > 1
                ? "No turn left brings it nearer. Look through the causes beside before any more is turned."
                : $"Idle and off idle are within their limits. {FinalSpeed(idle)}{(mixture ? "Read" : "Set the idle mixture, then read")} idle once more at its final speed, lock the nuts and read again: locking moves them.",
        };
    }

    // near idle, speed goes as the air that all barrels pass together; all stops alike leave the balance as it is
    private string FinalSpeed(Condition idle)
    {
        var stops = Plan.Adjusters.Where(a => a.Kind == AdjusterKind.MasterStop).DefaultIfEmpty(Plan.Adjusters.FirstOrDefault(a => a.Kind == AdjusterKind.StopScrew)).OfType<Adjuster>().ToList();
        if (idle.Rpm is not > 0 || stops.Count == 0 || idle.Nominal.Own(stops[0]) <= 0)
        {
            return "";
        }

        var step = 1.0 / stops[0].StepsATurn;
        var turns = Math.Round(((Plan.IdleRpm / idle.Rpm.Value) - 1) * idle.Mean / idle.Nominal.Own(stops[0]) / step) * step;
        var which = stops[0].Kind == AdjusterKind.MasterStop || Plan.Adjusters.Count(a => a.Kind == AdjusterKind.StopScrew) == 1 ? $"turn the {stops[0].Thing}" : "turn every stop screw alike";
        return turns == 0 ? "" : Line($"It idles at {idle.Rpm:0} rpm, wanted {Plan.IdleRpm:0}: {which} {MoveWords.Way(stops[0], turns)} {MoveWords.HowFar(stops[0], turns)}. ");
    }

    /// <summary>Where the work stands.</summary>
    /// <param name="next">What comes next.</param>
    /// <returns>A sentence.</returns>
    public string Said(NextMove next) => next.Kind switch
    {
        NextKind.Read when _model.Idle is null => "Nothing read yet.",
        NextKind.Turn when next.MovesForeseen > 1 => Line($"{next.MovesForeseen} turns foreseen, this one first."),
        NextKind.Turn => "One turn foreseen.",
        NextKind.RodsOff => Line($"{next.MovesForeseen} turns foreseen once the rods are off."),
        _ => $"{next.Who}: {char.ToLowerInvariant(next.What[0])}{next.What[1..]}.",
    };

    private static NextMove Turning(Adjuster adjuster, double turns, string why, IReadOnlyList<ExpectedReading> expect) => new()
    {
        Kind = NextKind.Turn,
        Who = adjuster.Where,
        What = $"{char.ToUpperInvariant(adjuster.Thing[0])}{adjuster.Thing[1..]}: {MoveWords.Way(adjuster, turns)} {MoveWords.HowFar(adjuster, turns)}",
        Why = why,
        Adjuster = adjuster,
        Turns = turns,
        Expect = expect,
        MovesForeseen = 1,
    };

    private List<ExpectedReading> Expected(Condition condition, Adjuster adjuster, double turns)
    {
        var place = condition.Place(adjuster);
        var reading = _book.Meter;
        return [.. adjuster.Barrels.Select(b =>
        {
            var row = condition.Rows[b - 1];
            var (level, variance) = row.Expect([(place, turns)]);
            var band = Ninety * Math.Sqrt(variance + (reading.AirDeviation(level) * reading.AirDeviation(level)));
            return new ExpectedReading(b, row.Level, level, Math.Max(level - band, 0), level + band);
        })];
    }

    private string Learned(Condition condition, Adjuster adjuster)
    {
        var gain = _model.Gains.FirstOrDefault(g => string.Equals(g.Adjuster.Key, adjuster.Key, StringComparison.Ordinal) && g.HeldRpm == condition.HeldRpm);
        return gain is null
            ? Line($"A turn should be worth some {condition.Nominal.Own(adjuster):0.0} kg/h; this one will show.")
            : Line($"A turn of it has been worth {gain.PerTurn:0.0} ±{gain.Band:0.0} kg/h.");
    }

    private static string Barrels(Adjuster adjuster) => adjuster.Barrels.Count == 1
        ? Line($"Barrel {adjuster.Barrels[0]}")
        : $"Barrels {string.Join(", ", adjuster.Barrels.SkipLast(1))} and {adjuster.Barrels[^1]}";

    // a screw may be turned though its own barrels stand right: for the mean of the bank, or for the speed
    private string Standing(Adjuster adjuster, double own, double mean, bool idle) =>
        Math.Abs(own - mean) < ALittle * _book.Limits.OffMean(idle, mean)
            ? Line($"{Barrels(adjuster)} {(adjuster.Barrels.Count > 1 ? "stand" : "stands")} near the mean of {mean:0.0} kg/h; with the turns that follow, this one brings {(Plan.Banks > 1 ? "the banks together" : "all together")}{(idle ? " and the idle speed nearer" : "")}.")
            : Line($"{Barrels(adjuster)} {(adjuster.Barrels.Count > 1 ? "pass" : "passes")} {Math.Abs(own - mean):0.0} kg/h {(own < mean ? "less" : "more")} than the mean of {mean:0.0}.");

    private static string Speed(double? heldRpm) => heldRpm is { } rpm ? string.Create(CultureInfo.InvariantCulture, $"Held at {rpm:#,0} rpm") : "At idle";

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
