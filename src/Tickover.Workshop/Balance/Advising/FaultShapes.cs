using Tickover.Physics.Balancing;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>What each fault does to each reading (reference, section 2.2 and 2.11), in the physics of nearly shut plates.</summary>
/// <remarks>Sizes: common practice where the trade names them, else assumed; they are priors and the readings decide.</remarks>
internal sealed class FaultShapes
{
    private const double Atmosphere = 101;                  // kPa
    private const double FollowsAir = 0.85;                 // pressure behind the plate in proportion to air, less what burnt gas left over fills (assumed, ±20 %)
    private const double HottestPerKilopascal = 8;          // °C of header to a kPa of vacuum lost by late ignition (assumed)

    private readonly EnginePlan _plan;
    private readonly IReadOnlyList<FaultEntry> _entries;
    private readonly NominalGains _gains;
    private readonly double _idleAir;
    private readonly double _fastest;

    /// <summary>Begins with the readings.</summary>
    /// <param name="plan">The engine.</param>
    /// <param name="entries">The readings.</param>
    public FaultShapes(EnginePlan plan, IReadOnlyList<FaultEntry> entries)
    {
        (_plan, _entries) = (plan, entries);
        _idleAir = entries.FirstOrDefault(e => e.Kind == ReadKinds.Air && e.Condition == 0)?.Mean ?? 4;
        _gains = new NominalGains(plan, idle: true, _idleAir);
        _fastest = entries.Where(e => e.Kind == ReadKinds.Air && e.Condition > 0).Select(e => e.Mean).DefaultIfEmpty(0).Max();
    }

    /// <summary>How much more an entry may be off because vacuum follows air only roughly.</summary>
    /// <param name="entry">The entry.</param>
    /// <returns>Standard deviation in the entry's unit.</returns>
    public double Roughness(FaultEntry entry) => entry.Kind == ReadKinds.Vacuum && _entries.FirstOrDefault(e => e is { Kind: ReadKinds.Air, IsRepeat: false } && e.Condition == entry.Condition && e.Barrel == entry.Barrel) is { } air
        ? 0.2 * Math.Abs(Pull(entry) * air.Value)
        : 0;

    /// <summary>All faults and what they do; one with two ways round comes twice.</summary>
    /// <returns>Each fault with a pattern.</returns>
    public IEnumerable<(FaultPlace Fault, FaultPattern Pattern)> All() => [.. PerBarrel(), .. PerCarburettor(), .. PerBank()];

    /// <summary>Ordinary misadjustment: shapes with their standard deviations.</summary>
    /// <returns>Shape and deviation.</returns>
    public IEnumerable<(double[] Shape, double Deviation)> Ordinary()
    {
        foreach (var block in _entries.Where(e => !e.IsRepeat).GroupBy(e => (e.Kind, e.Condition)))
        {
            yield return (Shape(e => !e.IsRepeat && (e.Kind, e.Condition) == block.Key ? 1 : 0), Math.Max(1, 0.3 * Math.Abs(block.First().Mean)));
        }

        foreach (var shape in _plan.Carburettors.SelectMany(Screws).Concat(_plan.Barrels.SelectMany(Barrel)).Concat(Rods().Select(r => (Plate(r.Barrels, idle: false, held: true), 0.33))))
        {
            yield return shape;
        }
    }

    private IEnumerable<(double[], double)> Screws(PlanCarburettor carburettor)
    {
        var train = _plan.Layout is PlanLayout.InLine or PlanLayout.MotorcycleFour;
        yield return (Plate(carburettor.Barrels, idle: true, held: train), 0.35);
        if (!train)
        {
            yield return (Plate(carburettor.Barrels, idle: false, held: true), 0.05);
        }

        yield return (Lever(carburettor.Barrels), 0.01);
    }

    private IEnumerable<(double[], double)> Barrel(PlanBarrel barrel)
    {
        yield return (Plate([barrel.Number], idle: true, held: true), 0.06);
        yield return (Offset(barrel.Number), 0.22);
        yield return (Shape(e => e.Kind == ReadKinds.Vacuum && e.Barrel == barrel.Number ? 1 : 0), 1.0);
        yield return (Shape(e => e.Kind == ReadKinds.Lambda && e.Barrel == barrel.Number ? 1 : 0), 0.04);
        yield return (Shape(e => e.Kind == ReadKinds.Header && e.Barrel == barrel.Number ? 1 : 0), 15);
    }

    private IEnumerable<(FaultPlace, FaultPattern)> PerBarrel()
    {
        foreach (var barrel in _plan.Barrels)
        {
            var mine = barrel.Number;
            yield return (new(BalanceFault.MeterSeal, mine), One(Shape(e => e is { Kind: ReadKinds.Air, IsRepeat: false } && e.Barrel == mine ? -e.Mean : 0), 0.16, 0.06));
            yield return (new(BalanceFault.LeakBelowPlate, mine), One(Shape(e => Leak(e, mine)), 0.5, 0.2));
            yield return (new(BalanceFault.WeakCylinder, mine), One(Shape(e => e.Kind == ReadKinds.Vacuum && e.Barrel == mine ? -e.Mean : 0), 0.15, 0.06));
            if (_plan.Carburettors[barrel.Carburettor - 1] is { Barrels.Count: > 1 } of && of.Barrels[^1] == mine)
            {
                // the barrel far from the lever always hangs back
                yield return (new(BalanceFault.TwistedSpindle, mine), One(Plate([mine], idle: true, held: true), -0.62, 0.22));
            }

            foreach (var way in (int[])[-1, 1])
            {
                yield return (new(BalanceFault.PlateSeating, mine), One(Offset(mine), 0.85 * way, 0.25));
            }
        }
    }

    private IEnumerable<(FaultPlace, FaultPattern)> PerCarburettor()
    {
        foreach (var carburettor in _plan.Carburettors)
        {
            var mine = carburettor.Number;
            var scattered = carburettor.Barrels.SelectMany(b => _entries.Select((e, i) => (e, i)).Where(x => x.e.Kind == ReadKinds.Air && x.e.Barrel == b).Select(x => x.i)).ToList();
            if (scattered.Count > 0)
            {
                yield return (new(BalanceFault.WornSpindle, mine), new FaultPattern([.. scattered.Select(Unrest)], 0, 0.1));
            }

            foreach (var way in _fastest > 0 ? (int[])[-1, 1] : [])
            {
                yield return (new(BalanceFault.LeverAngle, mine), One(Lever(carburettor.Barrels), 0.08 * way, 0.03));
            }
        }

        foreach (var (place, barrels) in Rods())
        {
            // too long holds plates off their stop; too short lags as soon as the linkage moves
            yield return (new(BalanceFault.StopNotTouching, place), One(Plate(barrels, idle: true, held: true), 0.6, 0.2));
            if (_fastest > 0)
            {
                yield return (new(BalanceFault.RodLength, place), One(Plate(barrels, idle: false, held: true), -0.62, 0.2));
            }
        }
    }

    // a rod moves its carburettor and what hangs on it; the one between the banks goes by the first carburettor of the second
    private IEnumerable<(int Carburettor, IReadOnlyList<int> Barrels)> Rods() =>
        from rod in _plan.Adjusters
        where rod.Kind is AdjusterKind.LinkRod or AdjusterKind.BankRod || (rod.Kind == AdjusterKind.CouplingScrew && _plan.Layout == PlanLayout.ConstantDepression)
        select (_plan.Barrels[rod.Barrels[0] - 1].Carburettor, rod.Barrels);

    private IEnumerable<(FaultPlace, FaultPattern)> PerBank()
    {
        for (var bank = 1; _plan.Banks > 1 && bank <= _plan.Banks; bank++)
        {
            var mine = _plan.Barrels.Where(b => b.Bank == bank).Select(b => b.Number).ToHashSet();
            yield return (new(BalanceFault.BankTiming, bank), One(Shape(e => mine.Contains(e.Barrel) ? e.Kind switch { ReadKinds.Vacuum => -1, ReadKinds.Header => HottestPerKilopascal, _ => 0 } : 0), 4.5, 1.8));
        }
    }

    private double Leak(FaultEntry entry, int barrel) => entry.Barrel != barrel ? 0 : entry.Kind switch
    {
        ReadKinds.Vacuum => -Pull(entry),
        ReadKinds.Lambda => entry.Mean / _idleAir,
        _ => 0,
    };

    // kPa lost to a kg/h more at idle; on a shared manifold one barrel hardly moves its own vacuum
    private double Pull(FaultEntry vacuum) => _plan.Layout == PlanLayout.ConstantDepression ? 0 : FollowsAir * Math.Max(Atmosphere - vacuum.Mean, 10) / _idleAir;

    // plates moved by a degree, at idle, at held speeds or both
    private double[] Plate(IReadOnlyList<int> barrels, bool idle, bool held) => Shape(e => !barrels.Contains(e.Barrel) || e.IsRepeat ? 0 : e.Kind switch
    {
        ReadKinds.Air when (e.Condition == 0 ? idle : held) => _gains.PerDegree(e.Mean),
        ReadKinds.Vacuum when e.Condition == 0 && idle => -Pull(e) * _gains.FlowPerDegree,
        _ => 0,
    });

    // a kg/h more through a barrel everywhere
    private double[] Offset(int barrel) => Shape(e => e.Barrel != barrel || e.IsRepeat ? 0 : e.Kind switch
    {
        ReadKinds.Air => 1,
        ReadKinds.Vacuum when e.Condition == 0 => -Pull(e),
        _ => 0,
    });

    // part of the air at the fastest speed, falling with the plate's opening to nothing at idle
    // (nothing to grow by where no held round passes more air than idle: another engine's readings, or a slip)
    private double[] Lever(IReadOnlyList<int> barrels) => Shape(e => e is { Kind: ReadKinds.Air, IsRepeat: false, Condition: > 0 } && barrels.Contains(e.Barrel) && Growth(_fastest) > 0 ? _fastest * Growth(e.Mean) / Growth(_fastest) : 0);

    private double Growth(double air) => Math.Max(air - _idleAir, 0) * _gains.PerDegree(air);

    // a degree by which plates come to rest anew each time: twice in a difference of two readings
    private double[] Unrest(int place) => [.. _entries.Select((e, i) => i == place ? _gains.PerDegree(e.Mean) * (e.IsRepeat ? Math.Sqrt(2) : 1) : 0)];

    private double[] Shape(Func<FaultEntry, double> part) => [.. _entries.Select(part)];

    private static FaultPattern One(double[] shape, double mean, double deviation) => new([shape], mean, deviation);
}
