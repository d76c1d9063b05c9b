using System.Globalization;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Practice.Virtual;

/// <summary>Builds hidden faults into an engine.</summary>
internal static class FaultMaker
{
    private const double LeverSpeed = 2500;

    /// <summary>Draws which faults an engine gets: no two of a kind.</summary>
    public static IReadOnlyList<BalanceFault> Draw(EnginePlan plan, int count, Dice dice)
    {
        var left = Enum.GetValues<BalanceFault>().Where(f => Happens(plan, f)).ToList();
        List<BalanceFault> drawn = [];
        while (drawn.Count < count)
        {
            var one = left[dice.Below(left.Count)];
            drawn.Add(one);
            left.RemoveAll(f => f == one || (IsRod(f) && IsRod(one)));
        }

        return drawn;
    }

    /// <summary>Whether a fault is one of a rod.</summary>
    public static bool IsRod(BalanceFault fault) => fault is BalanceFault.StopNotTouching or BalanceFault.RodLength;

    /// <summary>The rod, bank rod or clamp that drives a carburettor; null where there is none.</summary>
    public static string? RodOf(EnginePlan plan, int carburettor) => plan.Layout switch
    {
        PlanLayout.TwoBanks when plan.Find($"rod:{carburettor}") is not null => $"rod:{carburettor}",
        PlanLayout.TwoBanks when carburettor == plan.Carburettors.FirstOrDefault(c => c.Bank == 2)?.Number => "bankrod",
        PlanLayout.ConstantDepression when carburettor == plan.Carburettors[^1].Number => "clamp",
        _ => null,
    };

    /// <summary>Builds one in.</summary>
    public static HiddenFault Hide(VirtualEngine engine, BalanceFault fault, Dice dice) => fault switch
    {
        BalanceFault.StopNotTouching => Rod(engine, fault, dice),
        BalanceFault.RodLength => Rod(engine, fault, dice),
        BalanceFault.LeverAngle => Lever(engine, dice),
        BalanceFault.BankTiming => Timing(engine, dice),
        BalanceFault.WornSpindle => Worn(engine, dice),
        BalanceFault.DeadScrew => Dead(engine, dice),
        _ => OfBarrel(engine, fault, dice),
    };

    private static bool Happens(EnginePlan plan, BalanceFault fault) => fault switch
    {
        BalanceFault.StopNotTouching or BalanceFault.RodLength => plan.Carburettors.Any(c => RodOf(plan, c.Number) is not null),
        BalanceFault.LeverAngle => plan.Carburettors.Count > 1,
        BalanceFault.TwistedSpindle => plan.Carburettors.Any(c => c.Barrels.Count > 1),
        BalanceFault.BankTiming => plan.Banks > 1,
        _ => true,
    };

    private static HiddenFault OfBarrel(VirtualEngine engine, BalanceFault fault, Dice dice)
    {
        var choice = fault == BalanceFault.TwistedSpindle
            ? [.. engine.Plan.Carburettors.Where(c => c.Barrels.Count > 1).Select(c => engine.Barrels[c.Barrels[^1] - 1])]
            : engine.Barrels;
        var barrel = choice[dice.Below(choice.Count)];
        var (size, undo) = fault switch
        {
            BalanceFault.PlateSeating => Set(dice.EitherWay(Sizes.Askew.Low, Sizes.Askew.High), "kg/h", v => barrel.AskewArea = v * barrel.AreaPerAir),
            BalanceFault.TwistedSpindle => Set(-dice.Between(Sizes.Twist.Low, Sizes.Twist.High), "°", v => barrel.Twist = v),
            BalanceFault.LeakBelowPlate => Set(dice.Between(Sizes.Leak.Low, Sizes.Leak.High), "kg/h", v => barrel.LeakArea = v * barrel.AreaPerAir),
            BalanceFault.MeterSeal => Set(dice.Between(Sizes.Seal.Low, Sizes.Seal.High), "of the air missed", v => barrel.Seal = 1 - v),
            _ => Set(dice.Between(Sizes.Weak.Low, Sizes.Weak.High), "of its pull lost", v => barrel.Pull = 1 - v),
        };
        return new() { Place = new(fault, barrel.Number), Size = size, Undo = undo };
    }

    private static (string Size, Action Undo) Set(double value, string unit, Action<double> set)
    {
        set(value);
        return (Words(value, unit), () => set(0));
    }

    // too long holds its plates off the stop; too short with as much lost motion is right at idle and late as soon as the linkage moves
    private static HiddenFault Rod(VirtualEngine engine, BalanceFault fault, Dice dice)
    {
        var driven = engine.Plan.Carburettors.Where(c => RodOf(engine.Plan, c.Number) is not null).ToList();
        var number = driven[dice.Below(driven.Count)].Number;
        var key = RodOf(engine.Plan, number)!;
        var rod = engine.Carburettors[number - 1].Joints.Single(j => string.Equals(j.Key, key, StringComparison.Ordinal));
        var size = dice.Between(Sizes.RodFault.Low, Sizes.RodFault.High);
        var sign = fault == BalanceFault.StopNotTouching ? 1 : -1;
        var behind = engine.Carburettors.Where(c => c.Joints.Contains(rod)).ToList();
        var slack = sign < 0 ? size : 0;
        rod.SetEffect(sign * size);
        behind.ForEach(c => c.Play += slack);
        return new()
        {
            Place = new(fault, number),
            Size = Words(sign * size, "°"),
            Undo = () =>
            {
                rod.SetEffect(0);
                behind.ForEach(c => c.Play -= slack);
            },
        };
    }

    private static HiddenFault Lever(VirtualEngine engine, Dice dice)
    {
        // the first carburettor, or the reference, leads; a lever is judged against it
        var others = engine.Carburettors.Where(c => c.Number != (engine.Plan.Reference ?? 1)).ToList();
        var number = others[dice.Below(others.Count)].Number;
        var one = engine.Carburettors[number - 1];
        var sound = one.RateError;
        var size = dice.EitherWay(Sizes.Lever.Low, Sizes.Lever.High);
        const double Trial = 0.02;
        var barrel = engine.Plan.Carburettors[number - 1].Barrels[0] - 1;
        var state = engine.Held(LeverSpeed);
        if (state is not null)
        {
            one.RateError = sound + Trial;
            var moved = engine.At(state.Rpm, state.Linkage).Barrels[barrel].Air / state.Barrels[barrel].Air;
            one.RateError = sound + (size * Trial / (moved - 1));
        }

        return new() { Place = new(BalanceFault.LeverAngle, number), Size = Words(size * 100, "% at 2,500 rpm"), Undo = () => one.RateError = sound };
    }

    private static HiddenFault Timing(VirtualEngine engine, Dice dice)
    {
        var bank = 1 + dice.Below(engine.Plan.Banks);
        var size = dice.Between(Sizes.Late.Low, Sizes.Late.High);
        engine.Late[bank] = size;
        return new() { Place = new(BalanceFault.BankTiming, bank), Size = Words(size, "° late"), Undo = () => engine.Late[bank] = 0 };
    }

    private static HiddenFault Worn(VirtualEngine engine, Dice dice)
    {
        var one = engine.Carburettors[dice.Below(engine.Carburettors.Count)];
        var barrels = engine.Barrels.Where(b => b.Carburettor == one.Number - 1).ToList();
        var leak = dice.Between(Sizes.WornLeak.Low, Sizes.WornLeak.High);
        one.Unrest = dice.Between(Sizes.WornUnrest.Low, Sizes.WornUnrest.High);
        barrels.ForEach(b => b.SpindleLeak = leak * b.AreaPerAir);
        return new()
        {
            Place = new(BalanceFault.WornSpindle, one.Number),
            Size = Words(one.Unrest, "° of unrest"),
            Undo = () =>
            {
                one.Unrest = Sizes.SoundUnrest;
                barrels.ForEach(b => b.SpindleLeak = 0);
            },
        };
    }

    private static HiddenFault Dead(VirtualEngine engine, Dice dice)
    {
        var screws = engine.Plan.Adjusters.Where(a => a.Kind is AdjusterKind.StopScrew or AdjusterKind.BypassScrew || (a.Kind == AdjusterKind.CouplingScrew && a.StepsATurn == 8 && a.TravelTurns > 1)).ToList();
        var key = screws[dice.Below(screws.Count)].Key;
        var screw = engine.Screws[key];
        screw.Dead = true;
        return new() { Place = new(BalanceFault.DeadScrew, 0, key), Size = "does nothing", Undo = () => screw.Dead = false };
    }

    private static string Words(double value, string unit) => string.Create(CultureInfo.InvariantCulture, $"{value:0.##} {unit}").Replace(" °", "°", StringComparison.Ordinal);
}
