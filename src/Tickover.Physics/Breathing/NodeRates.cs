using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Tickover.Physics.Breathing;

/// <summary>Rates of mass, burnt mass and energy of the shared volume.</summary>
internal struct NodeRates
{
    internal Vector256<double> Mass;
    internal Vector256<double> Burnt;
    internal Vector256<double> Energy;

    /// <summary>Adds a flow into the volume with what it carries.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Add(Vector256<double> flow, Vector256<double> burnt, Vector256<double> enthalpy)
    {
        Mass += flow;
        Burnt += flow * burnt;
        Energy += flow * enthalpy;
    }
}
