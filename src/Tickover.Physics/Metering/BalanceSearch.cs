using System.Runtime.Intrinsics;

namespace Tickover.Physics.Metering;

/// <summary>Finds the value that what follows from it would hold: bracketed secant, four lanes.</summary>
/// <remarks>
/// Level in the emulsion tube, m, and idle fuel drawn through the main jet, kg/s. What is held falls as the value rises (a lower
/// level uncovers more holes and draws more air; more idle fuel costs the idle jet more head), so there is exactly one balance.
/// </remarks>
internal sealed class BalanceSearch
{
    private const double LeastSlope = 0.5;

    private const int Patience = 5;                      // calls after which every other one halves the bracket

    private readonly double _bottom;
    private readonly double _top;
    private readonly double _leastMove;
    private int _calls;
    private Vector256<double> _low;
    private Vector256<double> _high;
    private Vector256<double> _last;
    private Vector256<double> _lastError;
    private Vector256<double> _slope;                    // of the error on the value

    /// <summary>Sets the bounds.</summary>
    /// <param name="bottom">Least value.</param>
    /// <param name="top">Largest value.</param>
    /// <param name="firstSlope">First guess of the slope of what is held less the value on the value; negative.</param>
    /// <param name="leastMove">Moves below this tell nothing of the slope.</param>
    internal BalanceSearch(double bottom, double top, double firstSlope, double leastMove)
    {
        (_bottom, _top, _leastMove) = (bottom, top, leastMove);
        _slope = Vector256.Create(firstSlope);
    }

    /// <summary>Value to try next.</summary>
    internal Vector256<double> Value { get; private set; }

    /// <summary>Opens the bracket again, for another search from where the last one ended.</summary>
    internal void Open() => (_low, _high, _calls) = (Vector256.Create(_bottom), Vector256.Create(_top), 0);

    /// <summary>Takes the value that <see cref="Value"/> would hold.</summary>
    /// <returns>All bits set in lanes that balance.</returns>
    internal Vector256<double> Update(Vector256<double> held, double tolerance)
    {
        // at a bound the balance is as good as exact: below the bottom of the well nothing more is uncovered
        var clamped = Vector256.Min(Vector256.Max(held, Vector256.Create(_bottom)), Vector256.Create(_top));
        var error = clamped - Value;
        var done = Vector256.LessThanOrEqual(Vector256.Abs(error), Vector256.Create(tolerance));
        var below = Vector256.GreaterThan(error, Vector256<double>.Zero);
        _low = Vector256.ConditionalSelect(below, Vector256.Max(_low, Value), _low);
        _high = Vector256.ConditionalSelect(below, _high, Vector256.Min(_high, Value));

        var moved = Value - _last;
        var tells = Vector256.GreaterThan(Vector256.Abs(moved), Vector256.Create(_leastMove));
        var slope = Vector256.Min((error - _lastError) / Vector256.ConditionalSelect(tells, moved, Vector256<double>.One), Vector256.Create(-LeastSlope));
        _slope = Vector256.ConditionalSelect(tells, slope, _slope);
        var next = Value - error / _slope;
        if (++_calls > Patience && _calls % 2 == 0)
        {
            // a row of holes that just opens is a kink over which the secant creeps
            next = Vector256.Create(double.PositiveInfinity);
        }

        var inside = Vector256.GreaterThanOrEqual(next, _low) & Vector256.LessThanOrEqual(next, _high);
        var middle = (_low + _high) * 0.5;
        (_last, _lastError) = (Value, error);
        Value = Vector256.ConditionalSelect(done, Value, Vector256.ConditionalSelect(inside, next, middle));
        return done;
    }
}
