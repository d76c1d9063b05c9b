using System.Runtime.Intrinsics;

namespace Tickover.Physics.Metering;

/// <summary>Finds the part of gas in the well that the flows it lets through would make: secant in four lanes.</summary>
/// <remarks>More gas lightens the column and draws more gas, so plain repetition creeps; the slope carries over to the next level.</remarks>
internal sealed class VoidSearch
{
    private const double Most = 0.98;
    private const double LeastMove = 1e-7;
    private const double LeastSlope = -4, MostSlope = 0.9;   // of the part held on the part assumed

    private Vector256<double> _lastHeld;
    private Vector256<double> _lastUsed;
    private Vector256<double> _slope = Vector256.Create(0.3);

    /// <summary>Part of gas to try next, 1.</summary>
    internal Vector256<double> Value { get; private set; }

    /// <summary>Takes the part that the flows at <see cref="Value"/> would make.</summary>
    /// <param name="held">That part, 1.</param>
    /// <param name="again">Whether this is a repeat at the same level, which tells the slope.</param>
    /// <param name="tolerance">Difference that counts as none, 1.</param>
    /// <returns>All bits set in lanes that balance.</returns>
    internal Vector256<double> Update(Vector256<double> held, bool again, double tolerance)
    {
        var used = Value;
        var error = held - used;
        if (again)
        {
            var moved = used - _lastUsed;
            var tells = Vector256.GreaterThan(Vector256.Abs(moved), Vector256.Create(LeastMove));
            var slope = (held - _lastHeld) / Vector256.ConditionalSelect(tells, moved, Vector256<double>.One);
            slope = Vector256.Min(Vector256.Max(slope, Vector256.Create(LeastSlope)), Vector256.Create(MostSlope));
            _slope = Vector256.ConditionalSelect(tells, slope, _slope);
        }

        (_lastHeld, _lastUsed) = (held, used);
        var next = used + error / (Vector256<double>.One - _slope);
        Value = Vector256.Min(Vector256.Max(next, Vector256<double>.Zero), Vector256.Create(Most));
        return Vector256.LessThanOrEqual(Vector256.Abs(error), Vector256.Create(tolerance));
    }
}
