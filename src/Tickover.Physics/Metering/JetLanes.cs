using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Tickover.Physics.Fuels;

using Tickover.Physics.Flow;

namespace Tickover.Physics.Metering;

/// <summary>A metering jet for four operating points: flow from pressure and pressure from flow, laminar at the bottom.</summary>
/// <remarks>
/// Lichtarowicz, Duggins and Markland with the Reynolds number of the ideal velocity, which makes the law linear in the
/// pressure as flow dies away, so that it needs no regularisation: docs/physics/flow.md and metering.md (1), (2).
/// </remarks>
internal readonly struct JetLanes
{
    private const double ViscousFactor = 20, ViscousLength = 2.25;
    private const double HumpFactor = 0.005, HumpWidth = 7.5, HumpReynolds = 0.00015;
    private const double AttachedCoefficient = 0.827, AttachedLength = 0.0085;

    private readonly double _inverseCoefficient;
    private readonly double _viscous;      // 20 (1 + 2.25 L/D) ν / d, m/s
    private readonly double _hump;
    private readonly double _reynolds;     // d / ν, s/m
    private readonly double _area;
    private readonly double _density;

    internal JetLanes(double diameter, double lengthRatio, FuelProperties fuel)
    {
        var viscosity = fuel.ViscosityPascalSeconds / fuel.DensityKilogramsPerCubicMetre;
        _inverseCoefficient = 1 / (AttachedCoefficient - AttachedLength * lengthRatio);
        _viscous = ViscousFactor * (1 + ViscousLength * lengthRatio) * viscosity / diameter;
        _hump = HumpFactor * lengthRatio;
        _reynolds = diameter / viscosity;
        _area = Circle.Area(diameter);
        _density = fuel.DensityKilogramsPerCubicMetre;
    }

    /// <summary>Ideal Reynolds number of a pressure drop.</summary>
    internal double Reynolds(double drop) => Math.Sqrt(2 * Math.Max(drop, 0) / _density) * _reynolds;

    /// <summary>Flow and its slope at a pressure drop; no flow against the drop.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal (Vector256<double> Flow, Vector256<double> Slope) Flow(Vector256<double> drop)
    {
        var u = Vector256.Sqrt(Vector256.Max(drop, Vector256<double>.Zero) * (2 / _density));
        var a = Vector256.Create(_inverseCoefficient) - Hump(u);
        var denominator = a * u + Vector256.Create(_viscous);
        var flow = u * u / denominator * (_area * _density);
        var slope = (denominator + Vector256.Create(_viscous)) / (denominator * denominator) * _area;
        return (flow, Vector256.ConditionalSelect(Vector256.GreaterThan(drop, Vector256<double>.Zero), slope, Vector256<double>.Zero));
    }

    /// <summary>Pressure drop and its slope at a flow either way.</summary>
    /// <param name="flow">kg/s.</param>
    /// <param name="ideal">Ideal velocity of the last call, m/s, for the small hump term; receives the new one.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal (Vector256<double> Drop, Vector256<double> Slope) Drop(Vector256<double> flow, ref Vector256<double> ideal)
    {
        var a = Vector256.Create(_inverseCoefficient) - Hump(ideal);
        var v = Vector256.Abs(flow) / (_area * _density);
        var va = v * a;
        var root = Vector256.Sqrt(va * va + v * (4 * _viscous));
        var u = (va + root) * 0.5;
        ideal = u;

        // d(u²)/dv: with root -> 0 the limit is the viscous term alone
        var slope = Vector256.ConditionalSelect(
            Vector256.GreaterThan(root, Vector256.Create(1e-12)),
            u * (a + (va * a + Vector256.Create(2 * _viscous)) / root),
            Vector256.Create(_viscous));
        var drop = u * u * (_density / 2);
        return (Vector256.ConditionalSelect(Vector256.LessThan(flow, Vector256<double>.Zero), -drop, drop), slope * (0.5 / _area));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> Hump(Vector256<double> u)
    {
        var re = Vector256.Max(u * (_reynolds * HumpReynolds), Vector256.Create(1e-9));
        var log = Vector256.Log(re) * (1 / Math.Log(10));
        return Vector256.Create(_hump) / (Vector256<double>.One + log * log * HumpWidth);
    }
}
