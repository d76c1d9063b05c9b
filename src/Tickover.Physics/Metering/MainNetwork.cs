using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Tickover.Physics.Air;
using Tickover.Physics.Flow;
using Tickover.Physics.Fuels;

namespace Tickover.Physics.Metering;

/// <summary>
/// Main circuit on the instantaneous depression: fuel column with inertia, air through corrector and uncovered holes,
/// two-phase nozzle. docs/physics/metering.md (3) to (12). Four operating points at once.
/// </summary>
internal sealed class MainNetwork
{
    private const double StandardGravity = 9.80665;       // m/s², exact
    private const double DriftDistribution = 1.2;         // Zuber and Findlay 1965, from memory: metering (9)
    private const double DriftVelocity = 0.25;            // m/s, bubbles in petrol, from memory
    private const int AirIterations = 3;
    private const int MaximumPasses = 24;
    private const double LevelTolerance = 2e-5;           // m
    private const double CycleTolerance = 1e-4;           // of the fuel column's own flow
    private const double NoFuel = 1e-12;                  // kg/s

    private readonly MainCircuit _main;
    private readonly EmulsionTube _tube;
    private readonly JetLanes _jet;
    private readonly double _lip;
    private readonly double _vent;
    private readonly double _fuelDensity;
    private readonly double _airDensity;
    private readonly double _inverseInertance;
    private readonly double _nozzle;                      // 1 / (2 (Cd A)²), 1/m⁴

    internal MainNetwork(BarrelSpec barrel, AmbientAir ambient, FuelProperties fuel)
    {
        _main = barrel.Main;
        _tube = new EmulsionTube(_main);
        _jet = new JetLanes(_main.JetDiameterMetres, _main.JetLengthRatio, fuel);
        _lip = barrel.Float.LipHeightMetres;
        _vent = barrel.Float.VentPressureRisePascals;
        _fuelDensity = fuel.DensityKilogramsPerCubicMetre;
        _airDensity = ambient.DensityKilogramsPerCubicMetre;
        var column = Circle.Area(_main.ColumnDiameterMetres);
        _inverseInertance = column / _main.ColumnLengthMetres;
        var nozzle = _main.NozzleDischargeCoefficient * Circle.Area(_main.NozzleDiameterMetres);
        _nozzle = 0.5 / (nozzle * nozzle);
    }

    /// <summary>Finds the level that balances over the cycle, and the flows that go with it.</summary>
    /// <param name="depression">Depression in the auxiliary venturi at each step, Pa.</param>
    /// <param name="step">Length of a step, s.</param>
    /// <param name="guess">Level to start from, m.</param>
    internal MainResult Solve(Vector256<double>[] depression, Vector256<double> step, Vector256<double> guess)
    {
        var level = new LevelSearch(guess, -_main.WellDepthMetres, _vent / (_fuelDensity * StandardGravity));
        var pass = default(MainPass);
        var done = Vector256<double>.Zero;
        for (var k = 0; k < MaximumPasses; k++)
        {
            var previous = pass;
            var setting = Setting(level.Level, previous);
            pass = Pass(depression, step, setting, previous);
            done = level.Update(pass.Level, LevelTolerance)
                & Vector256.LessThanOrEqual(Vector256.Abs(pass.End - pass.Start), pass.Fuel * CycleTolerance + Vector256.Create(NoFuel))
                & Vector256.LessThanOrEqual(Vector256.Abs(pass.Air - previous.Air), pass.Air * CycleTolerance + Vector256.Create(NoFuel));
            if (Vector256.EqualsAll(done.AsInt64(), Vector256<long>.AllBitsSet))
            {
                break;
            }
        }

        return new MainResult(pass.Fuel, pass.Air, pass.Level, pass.PeakDrop, pass.MeanDrop, done);
    }

    /// <summary>Whether every row of holes is uncovered at a level.</summary>
    internal bool AllUncovered(double level) => _tube.AllUncovered(level);

    /// <summary>Ideal Reynolds number of the jet at a pressure drop.</summary>
    internal double Reynolds(double drop) => _jet.Reynolds(drop);

    private MainSetting Setting(Vector256<double> level, in MainPass previous)
    {
        Span<double> area = stackalloc double[4];
        Span<double> height = stackalloc double[4];
        Span<double> column = stackalloc double[4];
        Span<double> corrector = stackalloc double[4];
        for (var l = 0; l < 4; l++)
        {
            (area[l], height[l]) = _tube.At(level[l]);
            var gas = previous.Air[l] / (_airDensity * _main.WellAreaSquareMetres);
            var liquid = previous.Fuel[l] / (_fuelDensity * _main.WellAreaSquareMetres);
            var voids = gas / (DriftDistribution * (gas + liquid) + DriftVelocity);              // (9)
            column[l] = StandardGravity * _fuelDensity * (1 - voids) * (_lip - height[l]);
            corrector[l] = area[l] > 0 ? area[l] / _tube.CorrectorArea : 0;
        }

        var bleed = Vector256.Create<double>(area);
        return new MainSetting(
            bleed * bleed * (2 * _airDensity),
            Vector256.Create<double>(column),
            Vector256.Create<double>(height) * (_fuelDensity * StandardGravity),
            Vector256.Create<double>(corrector) * Vector256.Create<double>(corrector));
    }

    private MainPass Pass(Vector256<double>[] depression, Vector256<double> step, in MainSetting setting, in MainPass previous)
    {
        var zero = Vector256<double>.Zero;
        var fuel = previous.End;
        var air = previous.EndAir;
        var ideal = previous.EndIdeal;
        var (sumFuel, sumAir, sumHead, sumDrop, peak) = (zero, zero, zero, zero, zero);
        var n = depression.Length;
        var next = depression[0];
        for (var i = 0; i < n; i++)
        {
            var now = next;
            next = depression[i + 1 < n ? i + 1 : 0];
            var middle = (now + next) * 0.5;
            var network = Network(middle, fuel, air, setting);
            air = network.Air;
            var (drop, dropSlope) = _jet.Drop(fuel, ref ideal);
            var drive = Vector256.Create(_vent) + middle - setting.Column - setting.Foot - network.Loss;       // (8)
            var rate = (drive - drop) * _inverseInertance;                                                     // (4)
            var slope = (network.LossSlope + dropSlope) * _inverseInertance;

            // one-stage Rosenbrock of second order; fuel does not run back through the jet
            var moved = fuel + step * rate / (Vector256<double>.One + step * slope * 0.5);
            var resting = Vector256.LessThanOrEqual(fuel, zero);
            sumHead += Vector256.ConditionalSelect(resting, Vector256.Max(drive, zero), drive) - network.AirDrop * setting.CorrectorShare;
            sumFuel += fuel;
            sumAir += air;
            sumDrop += drop;
            peak = Vector256.Max(peak, drop);
            fuel = Vector256.Max(moved, zero);
        }

        var mean = Vector256.Create(1.0 / n);
        var level = (Vector256.Create(_vent) - sumHead * mean) / (_fuelDensity * StandardGravity);             // (10)
        return new MainPass(previous.End, fuel, air, ideal, sumFuel * mean, sumAir * mean, level, peak, sumDrop * mean);
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
