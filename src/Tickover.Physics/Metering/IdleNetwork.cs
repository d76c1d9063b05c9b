using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Tickover.Physics.Air;
using Tickover.Physics.Breathing;
using Tickover.Physics.Flow;
using Tickover.Physics.Fuels;

namespace Tickover.Physics.Metering;

/// <summary>
/// Idle jet, bleed, mixture screw and progression holes swept by the plate's edge: the pressure in the passage follows
/// the pressures at its ports at once. docs/physics/metering.md (13) to (18). Four operating points at once.
/// </summary>
internal sealed class IdleNetwork
{
    private const double StandardGravity = 9.80665;
    private const double Regularisation = 1e-5;          // of the pressure: 1 Pa, for there is nothing stiff here
    private const int MaximumIterations = 40;
    private const double PressureTolerance = 0.02;       // Pa

    private readonly LaneOrifice _orifice = new(GasModel.FreshGamma, Regularisation);
    private readonly JetLanes _jet;
    private readonly Vector256<double> _chamber;         // chamber pressure less the lift's head, Pa
    private readonly Vector256<double> _ambient;
    private readonly Vector256<double> _gasTemperature;
    private readonly double _densityRatio;               // air over fuel
    private readonly double _bleedArea;
    private readonly double _airCoefficient;
    private readonly double _outletCoefficient;
    private readonly BarrelSpec _barrel;
    private Vector256<double> _bowl;                     // what feeds the jet, Pa

    internal IdleNetwork(BarrelSpec barrel, AmbientAir ambient, FuelProperties fuel)
    {
        _barrel = barrel;
        var idle = barrel.Idle;
        _jet = new JetLanes(idle.JetDiameterMetres, idle.JetLengthRatio, fuel);
        _chamber = Vector256.Create(
            ambient.PressurePascals + barrel.Float.VentPressureRisePascals - fuel.DensityKilogramsPerCubicMetre * StandardGravity * idle.LiftMetres);
        _ambient = Vector256.Create(ambient.PressurePascals);
        _gasTemperature = Vector256.Create(ambient.GasConstantJoulesPerKilogramKelvin * ambient.TemperatureKelvin);
        _densityRatio = ambient.DensityKilogramsPerCubicMetre / fuel.DensityKilogramsPerCubicMetre;
        _airCoefficient = idle.AirDischargeCoefficient;
        _outletCoefficient = idle.OutletDischargeCoefficient;
        _bleedArea = _airCoefficient * Circle.Area(idle.BleedDiameterMetres);
    }

    /// <summary>Ideal Reynolds number of the jet at a pressure drop.</summary>
    internal double Reynolds(double drop) => _jet.Reynolds(drop);

    /// <summary>Solves the passage over the cycle and averages.</summary>
    /// <param name="signals">Pressures before and behind the plate.</param>
    /// <param name="openings">Openings of the four lanes, radians.</param>
    /// <param name="mainDrop">Mean pressure drop at the main jet, Pa, of which the idle jet feels its share.</param>
    /// <param name="most">Moments of the cycle to look at; the signals are smooth, 360 hold their mean.</param>
    internal IdleResult Solve(BarrelSignals signals, ReadOnlySpan<double> openings, Vector256<double> mainDrop, int most)
    {
        var ports = Ports(openings);
        _bowl = _chamber - mainDrop * _barrel.Idle.MainWellShare;                                 // (16)
        var past = ports.Screw / Vector256.Max(ports.Screw + ports.Behind, Vector256.Create(1e-30));
        var (screw, holes, air, peak) = (Vector256<double>.Zero, Vector256<double>.Zero, Vector256<double>.Zero, Vector256<double>.Zero);
        var stride = Math.Max(1, signals.Steps / most);
        var (pressure, before) = (_ambient, _ambient);
        var samples = 0;
        for (var i = 0; i < signals.Steps; i += stride, samples++)
        {
            var (found, flows) = Balance(signals.Up[i], signals.Down[i], pressure * 2.0 - before, ports);
            var outflow = Vector256.Max(flows.ToManifold + flows.ToBarrel, Vector256.Create(1e-30));
            var byScrew = flows.Fuel * flows.ToManifold / outflow * past;                         // (18)
            screw += byScrew;
            holes += flows.Fuel - byScrew;
            air += flows.Air;
            peak = Vector256.Max(peak, _bowl - found);
            (before, pressure) = (pressure, found);
        }

        var mean = Vector256.Create(1.0 / samples);
        return new IdleResult(screw * mean, holes * mean, air * mean, peak);
    }

    private IdlePorts Ports(ReadOnlySpan<double> openings)
    {
        Span<double> behind = stackalloc double[4];
        Span<double> before = stackalloc double[4];
        for (var l = 0; l < 4; l++)
        {
            var split = PlateEdge.Split(_barrel.Idle, _barrel.AirWay, openings[l]);
            (behind[l], before[l]) = (split.BehindSquareMetres, split.BeforeSquareMetres);
        }

        return new IdlePorts(
            Vector256.Create(PlateEdge.ScrewArea(_barrel.Idle)), Vector256.Create<double>(behind), Vector256.Create<double>(before));
    }

    // Root of inflow − outflow, which falls with the pressure in the passage: Newton kept inside a shrinking bracket.
    private (Vector256<double> Pressure, IdleFlows Flows) Balance(
        Vector256<double> up, Vector256<double> down, Vector256<double> start, in IdlePorts ports)
    {
        var low = Vector256.Min(Vector256.Min(up, down), Vector256.Min(_ambient, _bowl));
        var high = Vector256.Max(Vector256.Max(up, down), Vector256.Max(_ambient, _bowl));
        var p = Vector256.Min(Vector256.Max(start, low), high);
        for (var k = 0; ; k++)
        {
            var flows = At(p, up, down, ports);
            var (excess, slope) = flows.Excess(_densityRatio);
            var rising = Vector256.GreaterThan(excess, Vector256<double>.Zero);
            low = Vector256.ConditionalSelect(rising, p, low);
            high = Vector256.ConditionalSelect(rising, high, p);
            var next = p - excess / Vector256.Min(slope, Vector256.Create(-1e-30));
            var inside = Vector256.GreaterThanOrEqual(next, low) & Vector256.LessThanOrEqual(next, high);
            next = Vector256.ConditionalSelect(inside, next, (low + high) * 0.5);
            var moved = Vector256.Abs(next - p);
            if (k == MaximumIterations || Vector256.LessThanAll(moved, Vector256.Create(PressureTolerance)))
            {
                return (next, flows);
            }

            p = next;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private IdleFlows At(Vector256<double> p, Vector256<double> up, Vector256<double> down, in IdlePorts ports)
    {
        var zero = Vector256<double>.Zero;
        var (fuel, fuelSlope) = _jet.Flow(_bowl - p);
        var bleed = _orifice.Between(_ambient, _gasTemperature, p, _gasTemperature);
        var before = _orifice.Between(up, _gasTemperature, p, _gasTemperature);
        var behind = _orifice.Between(p, _gasTemperature, down, _gasTemperature);
        var beforeArea = ports.Before * _airCoefficient;
        var behindArea = (ports.Behind + ports.Screw) * _outletCoefficient;
        var enters = Vector256.GreaterThan(before.Flux, zero);
        var leaves = Vector256.GreaterThan(behind.Flux, zero);
        var (inward, inwardSlope) = (before.Flux * beforeArea, before.OnB * beforeArea);
        var (outward, outwardSlope) = (behind.Flux * behindArea, behind.OnA * behindArea);
        return new IdleFlows(
            fuel,
            fuelSlope,
            bleed.Flux * _bleedArea + Vector256.ConditionalSelect(enters, inward, zero) - Vector256.ConditionalSelect(leaves, zero, outward),
            bleed.OnB * _bleedArea + Vector256.ConditionalSelect(enters, inwardSlope, zero) - Vector256.ConditionalSelect(leaves, zero, outwardSlope),
            Vector256.ConditionalSelect(leaves, outward, zero),
            Vector256.ConditionalSelect(enters, zero, -inward),
            Vector256.ConditionalSelect(leaves, outwardSlope, zero) - Vector256.ConditionalSelect(enters, zero, inwardSlope));
    }
}
