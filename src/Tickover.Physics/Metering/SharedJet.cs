using System.Runtime.Intrinsics;
using Tickover.Physics.Breathing;

namespace Tickover.Physics.Metering;

/// <summary>
/// Main and idle circuit of one barrel together, where the idle jet draws from the main well: its fuel passes the main jet first,
/// so each takes head from the other. docs/physics/metering.md (28). Four operating points at once.
/// </summary>
internal sealed class SharedJet
{
    private const int MostTries = 12;
    private const double FirstSlope = -1.05;              // of the idle fuel held less that assumed: mostly it hardly matters
    private const double LeastMove = 1e-10;               // kg/s
    private const double MostFuel = 0.01;                 // kg/s, far above any idle circuit
    private const double RoughTolerance = 1e-6;           // kg/s
    private const double Tolerance = 3e-8;                // kg/s: some 1e-4 of the fuel of an engine that idles
    private const int QuickSteps = 180;                   // in a cycle, up to which an approach costs as much as it saves
    private const int RoughSamples = 60;                  // of the idle passage in a cycle, for the approach

    private readonly MainNetwork _main;
    private readonly IdleNetwork _idle;
    private readonly int _steps;
    private readonly double _share;
    private readonly BalanceSearch _drawn = new(0, MostFuel, FirstSlope, LeastMove);

    internal SharedJet(MainNetwork main, IdleNetwork idle, double share, int steps) =>
        (_main, _idle, _share, _steps) = (main, idle, share, steps);

    /// <summary>Solves both over the cycle.</summary>
    /// <param name="depression">Depression in the auxiliary venturi at each step, Pa.</param>
    /// <param name="signals">Pressures before and behind the plate.</param>
    /// <param name="step">Length of a step, s.</param>
    /// <param name="openings">Openings of the four lanes, radians.</param>
    /// <remarks>Starts from the answer of the call before, which should be of a neighbouring point.</remarks>
    internal (MainResult Main, IdleResult Idle) Solve(
        Vector256<double>[] depression, BarrelSignals signals, Vector256<double> step, ReadOnlySpan<double> openings)
    {
        _drawn.Open();
        for (var k = 0; k < MostTries && _steps > QuickSteps; k++)
        {
            var rough = _main.Approach(depression, step, _drawn.Value);
            if (_share == 0 || Held(_idle.Solve(signals, openings, rough.MeanDrop, RoughSamples), RoughTolerance))
            {
                break;
            }
        }

        _drawn.Open();
        for (var k = 0; ; k++)
        {
            var main = _main.Solve(depression, step, _drawn.Value);
            var idle = _idle.Solve(signals, openings, main.MeanDrop, _steps);
            if (_share == 0 || Held(idle, Tolerance) || k == MostTries)
            {
                return (main, idle);
            }
        }
    }

    private bool Held(in IdleResult idle, double tolerance)
    {
        var done = _drawn.Update((idle.Screw + idle.Holes) * _share, tolerance);
        return Vector256.EqualsAll(done.AsInt64(), Vector256<long>.AllBitsSet);
    }
}
