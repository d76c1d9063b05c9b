using System.Runtime.Intrinsics;

namespace Tickover.Physics.Metering;

/// <summary>Finds the level in the emulsion tube at which the level the flows would hold equals it: bracketed secant, four lanes.</summary>
/// <remarks>The level held rises as the level falls (more holes, more air), so there is exactly one balance.</remarks>
internal sealed class LevelSearch
{
    private const double FirstSlope = -2;
    private const double LeastSlope = 0.5;
    private const double LeastMove = 1e-9;               // m

    private const int Patience = 5;                      // calls after which every other one halves the bracket

    private readonly double _bottom;
    private readonly double _top;
    private int _calls;
    private Vector256<double> _low;
    private Vector256<double> _high;
    private Vector256<double> _lastLevel;
    private Vector256<double> _lastError;
    private Vector256<double> _slope = Vector256.Create(FirstSlope);   // of the error on the level

    internal LevelSearch(double bottom, double top) => (_bottom, _top) = (bottom, Math.Max(top, 0) + 1e-4);

    /// <summary>Level to try next, m.</summary>
    internal Vector256<double> Level { get; private set; }

    /// <summary>Opens the bracket again, for another search from where the last one ended.</summary>
    internal void Open() => (_low, _high, _calls) = (Vector256.Create(_bottom), Vector256.Create(_top), 0);

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

        var moved = Level - _lastLevel;
        var tells = Vector256.GreaterThan(Vector256.Abs(moved), Vector256.Create(LeastMove));
        var slope = Vector256.Min((error - _lastError) / Vector256.ConditionalSelect(tells, moved, Vector256<double>.One), Vector256.Create(-LeastSlope));
        _slope = Vector256.ConditionalSelect(tells, slope, _slope);
        var next = Level - error / _slope;
        if (++_calls > Patience && _calls % 2 == 0)
        {
            // a row of holes that just opens is a kink over which the secant creeps
            next = Vector256.Create(double.PositiveInfinity);
        }

        var inside = Vector256.GreaterThanOrEqual(next, _low) & Vector256.LessThanOrEqual(next, _high);
        var middle = (_low + _high) * 0.5;
        (_lastLevel, _lastError) = (Level, error);
        Level = Vector256.ConditionalSelect(done, Level, Vector256.ConditionalSelect(inside, next, middle));
        return done;
    }
}
