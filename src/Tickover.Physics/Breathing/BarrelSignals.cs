using System.Runtime.Intrinsics;

namespace Tickover.Physics.Breathing;

/// <summary>What the fuel circuits of one barrel feel, at the start of each step, for four operating points.</summary>
internal sealed class BarrelSignals(int steps)
{
    /// <summary>Air flow into the engine, kg/s.</summary>
    internal Vector256<double>[] Flow { get; } = new Vector256<double>[steps];

    /// <summary>Depression in the auxiliary venturi below ambient, Pa.</summary>
    internal Vector256<double>[] Depression { get; } = new Vector256<double>[steps];

    /// <summary>Absolute static pressure just before the plate, Pa.</summary>
    internal Vector256<double>[] Up { get; } = new Vector256<double>[steps];

    /// <summary>Absolute pressure just behind the plate, Pa.</summary>
    internal Vector256<double>[] Down { get; } = new Vector256<double>[steps];

    internal int Steps => Flow.Length;
}
