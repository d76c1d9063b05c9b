using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Breathing;

/// <summary>An inert column of air with losses in series: a barrel from mouth to port, or a runner.</summary>
/// <remarks>docs/physics/breathing.md (7) and (8). Four operating points at once.</remarks>
internal readonly struct AirColumn(
    Vector256<double> inverseAreaSquared, Vector256<double> backInverseAreaSquared, Vector256<double> inverseInertance, Vector256<double> inverseSonicSquared)
{
    private const double SeriesWindow = 1e-4;

    /// <summary>One over the square of the effective area into the engine, 1/m⁴.</summary>
    internal readonly Vector256<double> InverseAreaSquared = inverseAreaSquared;

    /// <summary>The same out of it: a jet that leaves the mouth keeps nothing of its velocity head.</summary>
    internal readonly Vector256<double> BackInverseAreaSquared = backInverseAreaSquared;

    /// <summary>One over the inertance Σ L/A, m.</summary>
    internal readonly Vector256<double> InverseInertance = inverseInertance;

    /// <summary>One over the square of the sonic flow of the choke, (s/kg)²; zero where there is no choke.</summary>
    internal readonly Vector256<double> InverseSonicSquared = inverseSonicSquared;

    /// <summary>Rate of change of the flow, with its slopes.</summary>
    /// <param name="orifice">Flow law.</param>
    /// <param name="flow">Mass flow, kg/s.</param>
    /// <param name="p0">Pressure at the inlet, Pa.</param>
    /// <param name="rt0">R·T at the inlet, J/kg.</param>
    /// <param name="p1">Pressure at the outlet, Pa.</param>
    /// <param name="rt1">R·T at the outlet, J/kg.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal ColumnRate Rate(
        in LaneOrifice orifice, Vector256<double> flow, Vector256<double> p0, Vector256<double> rt0, Vector256<double> p1, Vector256<double> rt1)
    {
        var forward = Vector256.GreaterThanOrEqual(flow, Vector256<double>.Zero);
        var up = Vector256.ConditionalSelect(forward, p0, p1);
        var down = Vector256.ConditionalSelect(forward, p1, p0);
        var density = up / Vector256.ConditionalSelect(forward, rt0, rt1);
        var ratio = down / up;

        // C(r) = 2(1-r)/Ψ² turns the incompressible loss into the compressible one; 1 where the column runs against the pressure
        var deficit = Vector256.Max(Vector256<double>.One - ratio, Vector256<double>.Zero);
        var (g, slope) = orifice.Square(Vector256.Min(ratio, Vector256.Create(1 - SeriesWindow)));
        var near = Vector256.LessThan(deficit, Vector256.Create(SeriesWindow));
        var c = Vector256.ConditionalSelect(near, Vector256.Create(1.0), deficit * 2 / g);
        var cSlope = Vector256.ConditionalSelect(near, Vector256<double>.Zero, -(Vector256.Create(2.0) + c * slope) / g);

        var loss = Vector256.ConditionalSelect(forward, InverseAreaSquared, BackInverseAreaSquared) * 0.5 / density;
        var y = flow * flow * InverseSonicSquared;
        var y2 = y * y;
        var y4 = y2 * y2;
        var y8 = y4 * y4;
        var magnitude = Vector256.Abs(flow);
        var square = flow * magnitude;
        var k = loss * c;
        var rate = (p0 - p1 - k * (Vector256.Create(1.0) + y8) * square) * InverseInertance;

        // The secant to the flow that balances these pressures: equal to the tangent there, and never zero on the way
        // (at standstill the tangent is, and a nearly shut plate would overshoot a hundredfold).
        var balanced = Vector256.Sqrt(Vector256.Abs(p0 - p1) / k);
        var onFlow = -k * (magnitude * (Vector256.Create(1.0) + y8 * 18) + balanced) * InverseInertance;

        // slopes of k on the pressures; density kept (an inexact slope costs no order, see the integrator)
        var kDown = loss * cSlope / up * square;
        var onDown = -kDown;
        var onUp = kDown * ratio;
        var on0 = (Vector256.ConditionalSelect(forward, onUp, onDown) + Vector256.Create(1.0)) * InverseInertance;
        var on1 = (Vector256.ConditionalSelect(forward, onDown, onUp) - Vector256.Create(1.0)) * InverseInertance;
        return new ColumnRate(rate, onFlow, on0, on1);
    }
}
