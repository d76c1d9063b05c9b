using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Tickover.Physics.Flow;

/// <summary>Compressible flow between two volumes for four operating points at once, with its slopes.</summary>
/// <remarks>The law of docs/physics/flow.md: regularised at zero flow, reversible, choked beyond the critical ratio.</remarks>
internal readonly struct LaneOrifice
{
    private readonly double _inverseGamma;
    private readonly double _factor;
    private readonly double _criticalRatio;
    private readonly double _epsilonSquared;

    /// <summary>Prepares the constants of one ratio of specific heats.</summary>
    internal LaneOrifice(double gamma, double regularisation)
    {
        _inverseGamma = 1 / gamma;
        _factor = 2 * gamma / (gamma - 1);
        _criticalRatio = Math.Pow(2 / (gamma + 1), gamma / (gamma - 1));
        _epsilonSquared = 4 * regularisation * regularisation;
    }

    /// <summary>G(r) = Ψ² and its slope at the ratio clamped to the critical one.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal (Vector256<double> G, Vector256<double> Slope) Square(Vector256<double> ratio)
    {
        var r = Vector256.Max(ratio, Vector256.Create(_criticalRatio));
        var q = Vector256.Exp(Vector256.Log(r) * _inverseGamma);
        var a = q * q;
        var b = r * q;
        var g = (a - b) * _factor;
        var slope = (a * (2 * _inverseGamma) - b * (1 + _inverseGamma)) * _factor / r;
        return (g, slope);
    }

    /// <summary>Ψ regularised, and dΨ/dr, at a ratio of 1 or below.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal (Vector256<double> Psi, Vector256<double> Slope) Psi(Vector256<double> ratio)
    {
        var (g, slope) = Square(ratio);
        var square = g * g;
        var sum = square + Vector256.Create(_epsilonSquared);
        var root = Vector256.Sqrt(Vector256.Sqrt(sum));
        var psi = g / root;
        var dPsi = (square * 0.5 + Vector256.Create(_epsilonSquared)) / (sum * root);
        return (psi, dPsi * slope);
    }

    /// <summary>Mass flow from a to b for each unit of effective area, and its slopes on both pressures.</summary>
    /// <param name="pa">Pressure at a, Pa.</param>
    /// <param name="ta">Gas constant times temperature at a, J/kg.</param>
    /// <param name="pb">Pressure at b, Pa.</param>
    /// <param name="tb">Gas constant times temperature at b, J/kg.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal LaneFlux Between(Vector256<double> pa, Vector256<double> ta, Vector256<double> pb, Vector256<double> tb)
    {
        var forward = Vector256.GreaterThanOrEqual(pa, pb);
        var up = Vector256.Max(pa, pb);
        var ratio = Vector256.Min(pa, pb) / up;
        var k = Vector256<double>.One / Vector256.Sqrt(Vector256.ConditionalSelect(forward, ta, tb));
        var (psi, slope) = Psi(ratio);
        var flux = k * up * psi;
        var onDown = k * slope;
        var onUp = k * (psi - ratio * slope);
        return new LaneFlux(
            Vector256.ConditionalSelect(forward, flux, -flux),
            Vector256.ConditionalSelect(forward, onUp, -onDown),
            Vector256.ConditionalSelect(forward, onDown, -onUp));
    }
}
