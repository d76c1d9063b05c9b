using Tickover.Workshop.Balance.Plans;

namespace Tickover.Practice.Virtual;

/// <summary>Makes the engine of a plan and a seed, healthy and out of adjustment as cars come in.</summary>
internal static class EngineBuilder
{
    private const double SharedByManifold = 0.6;
    private const double SharedByBalancePipe = 0.05;

    /// <summary>Makes it.</summary>
    /// <param name="plan">What stands on the engine.</param>
    /// <param name="dice">The car's own random numbers.</param>
    /// <param name="rodsOut">How far rods are out, degrees either way.</param>
    public static VirtualEngine Build(EnginePlan plan, Dice dice, (double Low, double High) rodsOut)
    {
        var manifold = plan.Barrels.Any(b => b.Cylinders.Count > 1);
        var law = manifold ? Filling.SharedManifold : Filling.OwnRunner;
        var filling = dice.Between(Sizes.IdleFilling.Low, Sizes.IdleFilling.High);
        var swept = plan.Barrels.Select(b => Swept(plan, b)).ToList();
        var area = law.GapFor(filling) * VirtualEngine.CapacityPerCubicCentimetre * swept.Average() * plan.IdleRpm / ThrottlePlate.ChokedAirPerSquareMillimetre;
        var opening = ThrottlePlate.Opening(plan.ThrottleBoreMillimetres, plan.ClosedAngleDegrees, area);
        var scale = Scale(plan, opening, area);
        var joints = Joints(plan, dice, (rodsOut.Low * scale, rodsOut.High * scale));
        var carburettors = plan.Carburettors.Select(c => Carburettor(plan, c, (joints, opening, scale), dice)).ToList();
        var barrels = plan.Barrels.Select((b, i) => Barrel(plan, b, (swept[i], area / (filling * VirtualEngine.CapacityPerCubicCentimetre * swept[i] * plan.IdleRpm)), dice)).ToList();
        return new(plan, barrels, carburettors, new Linkage(carburettors, opening))
        {
            Law = law,
            IdleFilling = filling,
            Shared = manifold ? SharedByManifold : plan.Layout == PlanLayout.InLine ? SharedByBalancePipe : 0,
        };
    }

    /// <summary>Turns all stops alike until the engine idles about where it should.</summary>
    public static void SetIdle(VirtualEngine engine, double part)
    {
        var stops = engine.Carburettors.Select(c => c.Stop).OfType<Screw>().ToList();
        var found = stops.ConvertAll(s => s.Effect);
        var (low, high) = (-3.0, 3.0);
        for (var i = 0; i < 24; i++)
        {
            var middle = 0.5 * (low + high);
            for (var k = 0; k < stops.Count; k++)
            {
                stops[k].SetEffect(found[k] + middle);
            }

            (low, high) = (engine.Idle()?.Rpm ?? 0) < part * engine.Plan.IdleRpm ? (middle, high) : (low, middle);
        }
    }

    // sizes in degrees hold for plates whose air grows by 65 % of its idle value with a degree; others are as far out in air, not in degrees
    private static double Scale(EnginePlan plan, double opening, double area)
    {
        const double Step = 0.1;
        const double FurtherApart = 1.6; // two on a manifold hide from one another what sets them apart
        const double UsualPerDegree = 0.65;
        var perDegree = ((ThrottlePlate.Area(plan.ThrottleBoreMillimetres, plan.ClosedAngleDegrees, opening + Step) / area) - 1) / Step;
        return Math.Clamp(UsualPerDegree * (plan.Layout == PlanLayout.ConstantDepression ? FurtherApart : 1) / perDegree, 0.5, 4);
    }

    // two barrels on one cylinder share it
    private static double Swept(EnginePlan plan, PlanBarrel barrel) =>
        barrel.Cylinders.Sum(c => plan.SweptCubicCentimetres / plan.Barrels.Count(b => b.Cylinders.Contains(c)));

    private static Dictionary<string, Screw> Joints(EnginePlan plan, Dice dice, (double Low, double High) rodsOut)
    {
        var joints = new Dictionary<string, Screw>(StringComparer.OrdinalIgnoreCase);
        foreach (var adjuster in plan.Adjusters.Where(a => a.Kind is AdjusterKind.LinkRod or AdjusterKind.BankRod or AdjusterKind.CouplingScrew))
        {
            var clamp = plan.Layout == PlanLayout.ConstantDepression;
            var nominal = clamp ? Sizes.ClampGain : adjuster.Kind == AdjusterKind.CouplingScrew ? Sizes.CouplingGain : Sizes.RodGain;
            var joint = Make(adjuster, nominal, dice, (adjuster.TravelTurns / 2, 0));
            joint.SetEffect(dice.EitherWay(rodsOut.Low, rodsOut.High));
            joints.Add(adjuster.Key, joint);
        }

        return joints;
    }

    private static VirtualCarburettor Carburettor(EnginePlan plan, PlanCarburettor one, (Dictionary<string, Screw> Joints, double Opening, double Scale) known, Dice dice)
    {
        var mine = plan.Adjusters.Where(a => known.Joints.ContainsKey(a.Key) && a.Barrels.Intersect(one.Barrels).Any()).Select(a => known.Joints[a.Key]).ToList();
        var stop = StopOf(plan, one) is { } adjuster ? Make(adjuster, Sizes.StopGain, dice, (0, 0)) : null;
        stop?.SetEffect(known.Opening + (known.Scale * dice.Normal(Sizes.StopScatter)));
        var rigid = plan.Layout is PlanLayout.InLine or PlanLayout.MotorcycleFour;
        var delay = dice.Between(Sizes.Delay.Low, Sizes.Delay.High);
        var play = dice.Between(Sizes.Play.Low, Sizes.Play.High);
        var constantDepression = plan.Layout == PlanLayout.ConstantDepression;
        return new()
        {
            Number = one.Number,
            Stop = stop,
            Joints = mine,
            Delay = constantDepression && mine.Count > 0 ? delay : 0,
            Play = rigid ? 0 : constantDepression ? (mine.Count > 0 ? 2 * delay : 0) : play * (1 + (0.5 * mine.Count)),
            RateError = -Sizes.WindUp * mine.Count,
            Unrest = Sizes.SoundUnrest,
        };
    }

    private static Adjuster? StopOf(EnginePlan plan, PlanCarburettor one) => plan.Layout switch
    {
        PlanLayout.MotorcycleFour => one.Number == (plan.Reference ?? 2) ? plan.Find("master") : null,
        _ => plan.Adjusters.FirstOrDefault(a => a.Kind == AdjusterKind.StopScrew && string.Equals(a.Key, $"stop:{one.Number}", StringComparison.Ordinal)),
    };

    private static VirtualBarrel Barrel(EnginePlan plan, PlanBarrel barrel, (double Swept, double AreaPerAir) known, Dice dice)
    {
        var bypass = plan.Adjusters.FirstOrDefault(a => a.Kind == AdjusterKind.BypassScrew && a.Barrels.Contains(barrel.Number));
        var mixture = plan.Adjusters.First(a => a.Kind is AdjusterKind.MixtureScrew or AdjusterKind.JetNut && a.Barrels.Contains(barrel.Number));
        var screw = bypass is null ? null : Make(bypass, Sizes.BypassAir * known.AreaPerAir, dice, (0, dice.Between(0, 0.25)));
        var opened = dice.Unit() < 0.2 ? dice.Between(0, 0.75) : 0;
        if (screw is not null)
        {
            screw.Position = screw.Reached = opened;
        }

        var nut = mixture.Kind == AdjusterKind.JetNut;
        var fuel = Make(mixture, nut ? Sizes.JetNutGain : Sizes.MixtureGain, dice, (nut ? 2 : 2.5, 0));
        fuel.SetEffect(dice.Normal(0.03));
        return new()
        {
            Number = barrel.Number,
            Carburettor = barrel.Carburettor - 1,
            Bank = barrel.Bank,
            Swept = known.Swept,
            AreaPerAir = known.AreaPerAir,
            Seat = dice.Normal(Sizes.SeatScatter),
            Bypass = screw,
            Mixture = fuel,
        };
    }

    private static Screw Make(Adjuster adjuster, double nominal, Dice dice, (double Zero, double DeadStart) start) => new()
    {
        Key = adjuster.Key,
        Gain = nominal * dice.Between(1 - Sizes.GainScatter, 1 + Sizes.GainScatter),
        Travel = adjuster.TravelTurns,
        StepsATurn = adjuster.StepsATurn,
        Backlash = dice.Between(3, 8) / 360,
        Zero = start.Zero,
        DeadStart = start.DeadStart,
    };
}
