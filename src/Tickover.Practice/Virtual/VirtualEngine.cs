using Tickover.Workshop.Balance.Plans;

namespace Tickover.Practice.Virtual;

/// <summary>The engine itself: plates, runners, cylinders, work and friction. Nothing in it is a reading.</summary>
internal sealed class VirtualEngine
{
    /// <summary>Air that fills a cm³ once a cycle at 1 rpm, kg/h: 1.169 kg/m³ at 1 bar and 25 °C, a cycle every two turns.</summary>
    public const double CapacityPerCubicCentimetre = 1.169e-6 * 30;

    /// <summary>Lambda with the mixture screw where it should be and nothing leaking: idle of fixed-choke carburettors is a little rich (common practice).</summary>
    private const double BaseLambda = 0.92;

    /// <summary>Work a cycle asks for at standstill, of that at idle; the rest grows with speed [A: without load a raised engine fills little more than at idle].</summary>
    private const double StandingFriction = 0.9;

    /// <summary>Work lost with each degree the spark is late: 3.5 kg/h at 7° against 4 kg/h at 3° for the same idle (trade report 2.2).</summary>
    private const double WorkLostPerDegreeLate = 0.033;

    /// <summary>A late bank pushes more back: depression lost with each degree (assumed).</summary>
    private const double PullLostPerDegreeLate = 0.02;

    private const double BypassFuelShare = 0.5;
    private const double SlowestRpm = 250;
    private const double FastestRpm = 4500;
    private const double WidestDegrees = 60;

    private readonly double[] _gaps;

    public VirtualEngine(EnginePlan plan, IReadOnlyList<VirtualBarrel> barrels, IReadOnlyList<VirtualCarburettor> carburettors, Linkage linkage)
    {
        Plan = plan;
        Barrels = barrels;
        Carburettors = carburettors;
        Linkage = linkage;
        Unrest = new double[carburettors.Count];
        Late = new double[plan.Banks + 1];
        _gaps = new double[barrels.Count];
        Screws = carburettors.SelectMany(c => c.Joints.Append(c.Stop)).Concat(barrels.SelectMany(b => new[] { b.Bypass, b.Mixture })).OfType<Screw>().Distinct().ToDictionary(s => s.Key, StringComparer.OrdinalIgnoreCase);
    }

    public EnginePlan Plan { get; }

    public IReadOnlyList<VirtualBarrel> Barrels { get; }

    public IReadOnlyList<VirtualCarburettor> Carburettors { get; }

    public Linkage Linkage { get; }

    /// <summary>Every screw, nut and rod by its key.</summary>
    public IReadOnlyDictionary<string, Screw> Screws { get; }

    /// <summary>How cylinders fill.</summary>
    public required Filling Law { get; init; }

    /// <summary>How full cylinders are at the plan's idle speed.</summary>
    public required double IdleFilling { get; init; }

    /// <summary>Part of the depression one barrel shares with the others through manifold or balance pipe.</summary>
    public required double Shared { get; init; }

    /// <summary>How late each bank's spark is, degrees; by number of the bank.</summary>
    public double[] Late { get; }

    /// <summary>Where each carburettor's plates came to rest this time beside where they should, degrees.</summary>
    public double[] Unrest { get; }

    /// <summary>Friction against that of the warm engine.</summary>
    public double Friction { get; set; } = 1;

    /// <summary>Where it idles; null where it stalls.</summary>
    public EngineState? Idle()
    {
        var rest = Linkage.Rest();
        if (Surplus(SlowestRpm, rest) < 0)
        {
            return null;
        }

        var (low, high) = (SlowestRpm, FastestRpm);
        for (var i = 0; i < 40; i++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = Surplus(middle, rest) > 0 ? (middle, high) : (low, middle);
        }

        return low < Plan.IdleRpm * 0.45 ? null : At(low, rest);
    }

    /// <summary>Held at a speed by the cross-shaft; null where it idles faster than that or does not reach it.</summary>
    public EngineState? Held(double rpm)
    {
        var (low, high) = (Linkage.Rest(), WidestDegrees);
        if (Surplus(rpm, low) > 0 || Surplus(rpm, high) < 0)
        {
            return null;
        }

        for (var i = 0; i < 40; i++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = Surplus(rpm, middle) > 0 ? (low, middle) : (middle, high);
        }

        return At(rpm, high);
    }

    /// <summary>Everything at a speed and a place of the linkage, whether or not it would stay there.</summary>
    public EngineState At(double rpm, double linkage)
    {
        var common = Gaps(rpm, linkage);
        var states = new BarrelState[Barrels.Count];
        for (var i = 0; i < states.Length; i++)
        {
            states[i] = One(Barrels[i], (_gaps[i], common), (rpm, linkage));
        }

        return new(rpm, linkage, states);
    }

    // practice (8): work of all cylinders less friction
    private double Surplus(double rpm, double linkage)
    {
        var (work, swept) = (0.0, 0.0);
        foreach (var (state, barrel) in At(rpm, linkage).Barrels.Zip(Barrels))
        {
            work += state.Work * barrel.Swept;
            swept += barrel.Swept;
        }

        return (work / swept) - (IdleFilling * Friction * (StandingFriction + ((1 - StandingFriction) * rpm / Plan.IdleRpm)));
    }

    private double Gaps(double rpm, double linkage)
    {
        var (sum, swept) = (0.0, 0.0);
        for (var i = 0; i < _gaps.Length; i++)
        {
            var barrel = Barrels[i];
            var area = Mouth(barrel, linkage).Total + barrel.LeakArea + barrel.SpindleLeak;
            _gaps[i] = area * ThrottlePlate.ChokedAirPerSquareMillimetre / (CapacityPerCubicCentimetre * barrel.Swept * rpm);
            sum += _gaps[i] * barrel.Swept;
            swept += barrel.Swept;
        }

        return sum / swept;
    }

    private (double Plate, double Total) Mouth(VirtualBarrel barrel, double linkage)
    {
        var opening = Linkage.Opening(barrel.Carburettor, linkage) + Unrest[barrel.Carburettor] + barrel.Seat + barrel.Twist;
        var plate = Math.Max(0, ThrottlePlate.Area(Plan.ThrottleBoreMillimetres, Plan.ClosedAngleDegrees, opening) + barrel.AskewArea);
        return (plate, plate + (barrel.Bypass?.Effect ?? 0));
    }

    private BarrelState One(VirtualBarrel barrel, (double Own, double Common) gap, (double Rpm, double Linkage) at)
    {
        var seen = gap.Own + (Shared * (gap.Common - gap.Own));
        var overSonic = Law.Filled(seen) / seen;
        var (plate, mouth) = Mouth(barrel, at.Linkage);
        var perArea = ThrottlePlate.ChokedAirPerSquareMillimetre * overSonic;
        var unmetered = (barrel.LeakArea + barrel.SpindleLeak) * perArea;
        var air = mouth * perArea;

        // a screw of the idle system matters less the further the plate is open
        var idleShare = Math.Min(1, Plan.IdleRpm / at.Rpm);
        var fuelled = (plate + (BypassFuelShare * (mouth - plate))) * perArea;
        var fuel = Math.Max(fuelled * (1 + (barrel.Mixture.Effect * idleShare)), 1e-6);
        var lambda = Math.Min(BaseLambda * (air + unmetered) / fuel, 3);
        var filled = (air + unmetered) / (CapacityPerCubicCentimetre * barrel.Swept * at.Rpm);
        var spark = Math.Max(0, 1 - (WorkLostPerDegreeLate * Late[barrel.Bank]));

        // a weak cylinder or a late spark leaves air and mixture as they are and takes vacuum (trade report 2.2, table)
        var pull = barrel.Pull * (1 - (PullLostPerDegreeLate * Late[barrel.Bank]));
        return new(air, unmetered, Law.Depression(seen) * pull, lambda, filled * Burning(lambda) * spark * (0.5 + (0.5 * barrel.Pull)));
    }

    // best near lambda 0.9; falls slowly when richer, faster when leaner, to nothing when it no longer fires (assumed shape)
    private static double Burning(double lambda)
    {
        var away = lambda - 0.9;
        return Math.Max(0, 1 - ((away < 0 ? 2.0 : 3.5) * away * away));
    }
}
