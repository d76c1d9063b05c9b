using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Tickover.Physics.Air;
using Tickover.Physics.Flow;
using Tickover.Physics.Fuels;

namespace Tickover.Physics.Metering;

/// <summary>
/// Main circuit on the instantaneous depression: fuel column with inertia, air through corrector and uncovered holes,
/// two-phase nozzle; the idle circuit may draw through the same jet. docs/physics/metering.md (3) to (12), (22), (28). Four operating
/// points at once.
/// </summary>
internal sealed class MainNetwork
{
    private const double StandardGravity = 9.80665;       // m/s², exact
    private const double DriftDistribution = 1.2;         // Zuber and Findlay 1965, from memory: metering (9)
    private const double DriftVelocity = 0.25;            // m/s, bubbles in petrol, from memory
    private const double SurfaceTension = 0.0216;         // N/m, petrol at 20 °C, from memory
    private const int AirIterations = 2;                  // from the flow of the step before
    private const int MaximumLevels = 30;
    private const int MaximumPasses = 3;                  // at one level
    private const int CoarseSteps = 90;                   // in a cycle, for the search
    private const int UsualSteps = 360;                   // in a cycle, for the answer
    private const double CoarseTolerance = 3e-3;          // of the part of gas and of the flow
    private const double FineTolerance = 3e-5;            // at the usual steps; fewer steps deserve no more
    private const double WellScale = 0.02;                // m of level for 1 of gas: equal weights
    private const double NoFlow = 1e-9;                   // kg/s
    private const double Above = 1e-4;                    // m by which the level may overshoot what the vent holds
    private const double FirstSlope = -2;                 // of the level held less the level, on the level
    private const double LeastMove = 1e-9;                // m
    private const double Forgetting = 0.02;               // least part of a start that a cycle forgets

    private readonly int _steps;
    private readonly MainCircuit _main;
    private readonly EmulsionTube _tube;
    private readonly JetLanes _jet;
    private readonly double _lip;
    private readonly double _film;                        // pressure across the surface that leaves the nozzle, Pa
    private readonly double _weight;                      // of a metre of fuel, Pa/m
    private readonly double _inverseBore;                 // metres of nozzle filled by a kilogram
    private readonly double _vent;
    private readonly double _fuelDensity;
    private readonly double _airDensity;
    private readonly VoidSearch _gas = new();
    private readonly BalanceSearch _level;
    private Vector256<double> _shared;                    // idle fuel that also passes the main jet, kg/s
    private Vector256<double> _rest;                      // drop it causes while the main circuit rests, Pa
    private Vector256<double> _restIdeal;
    private MainPass _pass;
    private readonly double _inverseInertance;
    private readonly double _nozzle;                      // 1 / (2 (Cd A)²), 1/m⁴

    internal MainNetwork(BarrelSpec barrel, AmbientAir ambient, FuelProperties fuel, int steps = UsualSteps)
    {
        _steps = steps;
        _main = barrel.Main;
        _tube = new EmulsionTube(_main);
        _jet = new JetLanes(_main.JetDiameterMetres, _main.JetLengthRatio, fuel);
        _lip = barrel.Float.LipHeightMetres;
        _film = 4 * SurfaceTension / _main.NozzleDiameterMetres;                                           // (3)
        _vent = barrel.Float.VentPressureRisePascals;
        _fuelDensity = fuel.DensityKilogramsPerCubicMetre;
        _weight = _fuelDensity * StandardGravity;
        _level = new BalanceSearch(-_main.WellDepthMetres, Math.Max(_vent / _weight, 0) + Above, FirstSlope, LeastMove);
        _inverseBore = 1 / (_fuelDensity * Circle.Area(_main.NozzleDiameterMetres));
        _airDensity = ambient.DensityKilogramsPerCubicMetre;
        var column = Circle.Area(_main.ColumnDiameterMetres);
        _inverseInertance = column / _main.ColumnLengthMetres;
        var nozzle = _main.NozzleDischargeCoefficient * Circle.Area(_main.NozzleDiameterMetres);
        _nozzle = 0.5 / (nozzle * nozzle);
    }

    /// <summary>Finds the level that balances over the cycle, and the flows that go with it.</summary>
    /// <param name="depression">Depression in the auxiliary venturi at each step, Pa.</param>
    /// <param name="step">Length of a step, s.</param>
    /// <param name="shared">Fuel of the idle circuit that passes the main jet too, kg/s.</param>
    /// <remarks>Starts from the answer of the call before, which should be of a neighbouring point.</remarks>
    internal MainResult Solve(Vector256<double>[] depression, Vector256<double> step, Vector256<double> shared)
    {
        Share(shared);
        _level.Open();
        return Result(Search(new CycleSteps(depression, step, _steps), FineTolerance * UsualSteps * UsualSteps / (_steps * _steps)));
    }

    /// <summary>The same on a few steps a cycle and to a few thousandths: where to begin.</summary>
    internal MainResult Approach(Vector256<double>[] depression, Vector256<double> step, Vector256<double> shared)
    {
        Share(shared);
        _level.Open();
        return Result(Search(new CycleSteps(depression, step, CoarseSteps), CoarseTolerance));
    }

    private void Share(Vector256<double> shared)                                                            // (28)
    {
        _shared = shared;
        _jet.Drop(shared, ref _restIdeal);
        _rest = _jet.Drop(shared, ref _restIdeal).Drop;
    }

    private MainResult Result(Vector256<double> done)
    {
        var flows = Vector256.GreaterThan(_pass.Fuel, Vector256<double>.Zero);
        return new MainResult(_pass.Fuel, _pass.Air, _pass.Level, _pass.PeakDrop & flows, _pass.MeanDrop, _rest, done);
    }

    /// <summary>Whether every row of holes is uncovered at a level.</summary>
    internal bool AllUncovered(double level) => _tube.AllUncovered(level);

    /// <summary>Ideal Reynolds number of the jet at a pressure drop.</summary>
    internal double Reynolds(double drop) => _jet.Reynolds(drop);

    private Vector256<double> Search(in CycleSteps steps, double tolerance)
    {
        var done = Vector256<double>.Zero;
        for (var k = 0; k < MaximumLevels && !Everywhere(done); k++)
        {
            var settled = Vector256<double>.Zero;
            for (var i = 0; i < MaximumPasses && !Everywhere(settled); i++)
            {
                _pass = Pass(steps, Setting(_level.Value, _gas.Value), _pass);
                settled = _gas.Update(Voids(_pass), i > 0, tolerance) & Periodic(_pass, tolerance);
            }

            done = _level.Update(_pass.Level, tolerance * WellScale) & settled;
        }

        return done;
    }

    private Vector256<double> Voids(in MainPass pass)                                                       // (9)
    {
        var gas = pass.Air / (_airDensity * _main.WellAreaSquareMetres);
        var liquid = pass.Fuel / (_fuelDensity * _main.WellAreaSquareMetres);
        return gas / ((gas + liquid) * DriftDistribution + Vector256.Create(DriftVelocity));
    }

    private static bool Everywhere(Vector256<double> mask) => Vector256.EqualsAll(mask.AsInt64(), Vector256<long>.AllBitsSet);

    // Fuel that stays below the lip all through a cycle goes on falling to where it rests: nothing leaves, and that is the answer.
    private static Vector256<double> Periodic(in MainPass pass, double tolerance) =>
        Vector256.Equals(pass.Fuel, Vector256<double>.Zero)
        | (Vector256.LessThanOrEqual(Vector256.Abs(pass.End - pass.Start), pass.Fuel * tolerance + Vector256.Create(NoFlow))
            & Vector256.LessThanOrEqual(Vector256.Abs(pass.Sag - pass.StartSag), Vector256.Create(tolerance * WellScale)));

    private MainSetting Setting(Vector256<double> level, Vector256<double> voids)
    {
        Span<double> area = stackalloc double[4];
        Span<double> height = stackalloc double[4];
        Span<double> column = stackalloc double[4];
        Span<double> corrector = stackalloc double[4];
        for (var l = 0; l < 4; l++)
        {
            (area[l], height[l]) = _tube.At(level[l]);
            column[l] = StandardGravity * _fuelDensity * (1 - voids[l]) * (_lip - height[l]);
            corrector[l] = area[l] > 0 ? area[l] / _tube.CorrectorArea : 0;
        }

        var bleed = Vector256.Create<double>(area);
        return new MainSetting(
            bleed * bleed * (2 * _airDensity),
            Vector256.Create<double>(column),
            Vector256.Create<double>(height) * _weight,
            Vector256.Create<double>(corrector) * Vector256.Create<double>(corrector));
    }

    private MainPass Pass(in CycleSteps steps, in MainSetting setting, in MainPass previous)
    {
        var zero = Vector256<double>.Zero;
        var (one, half) = (Vector256<double>.One, steps.Seconds * 0.5);
        var (start, startSag) = (previous.Next, previous.Sag);
        var (fuel, air, ideal, sag) = (start, previous.EndAir, previous.EndIdeal, startSag);
        var (lost, sumAir, sumCorrector, sumDrop, peak, memory) = (zero, zero, zero, zero, zero, one);
        var push = Vector256.Create(_vent - _film) - setting.Column - setting.Foot;
        var lowest = Vector256.Create(_lip) + _rest / _weight;
        foreach (var depression in steps.Depression)
        {
            var network = Network(depression - Vector256.Create(_film), Vector256.Max(fuel, zero), air, setting);
            air = network.Air;
            var (drop, dropSlope) = _jet.Drop(fuel + _shared, ref ideal);
            var rate = (push + depression + sag * _weight - network.Loss - drop) * _inverseInertance;          // (4), (8)
            var slope = (Vector256.ConditionalSelect(Vector256.GreaterThan(fuel, zero), network.LossSlope, zero) + dropSlope)
                * _inverseInertance * half;

            // one-stage Rosenbrock of second order: (12)
            var moved = fuel + steps.Seconds * rate / (one + slope);
            memory *= (one - slope) / (one + slope);

            // (22): what passes the lip has left, what falls back has to be lifted again
            var lifted = (fuel + moved) * half * _inverseBore - sag;
            lost += Vector256.Max(lifted, zero);
            sag = Vector256.Min(Vector256.Max(-lifted, zero), lowest);
            sumCorrector += network.AirDrop * setting.CorrectorShare;
            (sumAir, sumDrop) = (sumAir + air, sumDrop + drop);
            (fuel, peak) = (moved, Vector256.Max(peak, drop));
        }

        var mean = Vector256.Create(1.0 / steps.Depression.Length);
        var left = lost * mean / (steps.Seconds * _inverseBore);

        // while nothing leaves, the fuel only swings about where it will rest, and the jet has the mean drop of what idles through it
        var jet = Vector256.ConditionalSelect(Vector256.GreaterThan(left, zero), Vector256.Max(sumDrop * mean, zero), _rest);
        var level = (Vector256.Create(_vent) - jet + sumCorrector * mean) / _weight;                                            // (10)

        // Newton on the start of the cycle: the next one starts where this one would have closed
        var next = start + (fuel - start) / Vector256.Max(one - memory, Vector256.Create(Forgetting));
        return new MainPass(start, fuel, next, startSag, sag, air, ideal, left, sumAir * mean, level, peak, jet);
    }

    // Air through the holes at the fuel flow of the moment: (5) to (7), Newton on a convex rising function.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private MainFlow Network(Vector256<double> depression, Vector256<double> fuel, Vector256<double> air, in MainSetting setting)
    {
        var zero = Vector256<double>.Zero;
        var head = depression - setting.Column;
        var dry = Loss(fuel, zero);
        var draws = Vector256.GreaterThan(head - dry.Loss, zero) & Vector256.GreaterThan(setting.AirArea, zero);
        var area = Vector256.Max(setting.AirArea, Vector256.Create(1e-30));
        var most = Vector256.Sqrt(Vector256.Max(head, zero) * area);
        var m = Vector256.Min(Vector256.Max(air, most * 0.25), most);
        for (var k = 0; k < AirIterations; k++)
        {
            var wet = Loss(fuel, m);
            var f = m * m / area + wet.Loss - head;
            var fSlope = m * 2.0 / area + wet.OnAir;
            m = Vector256.Min(Vector256.Max(m - f / Vector256.Max(fSlope, Vector256.Create(1e-30)), zero), most);
        }

        m = Vector256.ConditionalSelect(draws, m, zero);
        var last = Loss(fuel, m);
        var airSlope = m * 2.0 / area;
        var follow = Vector256.ConditionalSelect(
            draws, airSlope / Vector256.Max(airSlope + last.OnAir, Vector256.Create(1e-30)), Vector256<double>.One);
        return new MainFlow(m, m * m / area, last.Loss, last.OnFuel * follow);
    }

    // (7): loss of the nozzle passage for air and fuel with slip
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private NozzleLoss Loss(Vector256<double> fuel, Vector256<double> air)
    {
        var s = _main.Slip;
        var total = fuel + air;
        var volume = air / (_airDensity * s) + fuel / _fuelDensity;
        var weight = Vector256.Max(air / s + fuel, Vector256.Create(1e-18));
        var specific = volume / weight;
        var loss = total * total * specific * _nozzle;
        var twice = total * specific * (2 * _nozzle);
        var square = total * total * _nozzle / weight;
        return new NozzleLoss(
            loss,
            twice + square * (Vector256.Create(1 / _fuelDensity) - specific),
            twice + square * (Vector256.Create(1 / (_airDensity * s)) - specific / s));
    }
}
