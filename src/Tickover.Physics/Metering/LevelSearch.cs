using System.Runtime.Intrinsics;

namespace Tickover.Physics.Metering;

/// <summary>Finds the level in the emulsion tube at which the level the flows would hold equals it: bracketed secant, four lanes.</summary>
/// <remarks>The level held rises as the level falls (more holes, more air), so there is exactly one balance.</remarks>
internal sealed class LevelSearch
{
    private readonly double _bottom;
    private readonly double _top;
    private Vector256<double> _low;
    private Vector256<double> _high;
    private Vector256<double> _lastLevel;
    private Vector256<double> _lastError;
    private bool _first = true;

    internal LevelSearch(Vector256<double> guess, double bottom, double top)
    {
        (_bottom, _top) = (bottom, Math.Max(top, 0) + 1e-4);
        _low = Vector256.Create(bottom);
        _high = Vector256.Create(_top);
        Level = Vector256.Min(Vector256.Max(guess, _low), _high);
    }

    /// <summary>Level to try next, m.</summary>
    internal Vector256<double> Level { get; private set; }

    /// <summary>Takes the level that the flows at <see cref="Level"/> would hold.</summary>
    /// <returns>All bits set in lanes that balance.</returns>
    internal Vector256<double> Update(Vector256<double> held, double tolerance)
    {
        // below the bottom nothing more is uncovered: the balance there is as good as exact
        var clamped = Vector256.Min(Vector256.Max(held, Vector256.Create(_bottom)), Vector256.Create(_top));
        var error = clamped - Level;
        var done = Vector256.LessThanOrEqual(Vector256.Abs(error), Vector256.Create(tolerance));
        var below = Vector256.GreaterThan(error, Vector256<double>.Zero);
        _low = Vector256.ConditionalSelect(below, Vector256.Max(_low, Level), _low);
        _high = Vector256.ConditionalSelect(below, _high, Vector256.Min(_high, Level));

        // the flows of the first passes were not yet periodic: a bracket that closed on the wrong place is opened again
        var lost = Vector256.LessThan(_high - _low, Vector256.Create(tolerance)) & ~done;
        _low = Vector256.ConditionalSelect(lost, Vector256.Create(_bottom), _low);
        _high = Vector256.ConditionalSelect(lost, Vector256.Create(_top), _high);
        var step = _first
            ? error * 0.5
            : -error * (Level - _lastLevel) / Slope(error - _lastError);
        var next = Level + step;
        var inside = Vector256.GreaterThanOrEqual(next, _low) & Vector256.LessThanOrEqual(next, _high);
        var middle = (_low + _high) * 0.5;
        (_lastLevel, _lastError, _first) = (Level, error, false);
        Level = Vector256.ConditionalSelect(done, Level, Vector256.ConditionalSelect(inside, next, middle));
        return done;
    }

    private static Vector256<double> Slope(Vector256<double> difference)
    {
        var tiny = Vector256.Create(1e-15);
        return Vector256.ConditionalSelect(Vector256.LessThan(Vector256.Abs(difference), tiny), tiny, difference);
    }
}
