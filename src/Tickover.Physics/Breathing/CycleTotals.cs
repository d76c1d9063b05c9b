using System.Runtime.Intrinsics;

namespace Tickover.Physics.Breathing;

/// <summary>What a cycle adds up to, for four operating points, and the wave forms it leaves.</summary>
internal sealed class CycleTotals(int steps, int barrels)
{
    /// <summary>Mass flow of each barrel at the start of each step, kg/s.</summary>
    internal Vector256<double>[][] Flow { get; } = [.. Enumerable.Range(0, barrels).Select(_ => new Vector256<double>[steps])];

    /// <summary>Absolute pressure behind the plates at the start of each step, Pa.</summary>
    internal Vector256<double>[] Down { get; } = new Vector256<double>[steps];

    /// <summary>Net air of each barrel over the cycle, kg.</summary>
    internal Vector256<double>[] Air { get; } = new Vector256<double>[barrels];

    /// <summary>Air flowing back out of each barrel, kg.</summary>
    internal Vector256<double>[] Back { get; } = new Vector256<double>[barrels];

    internal Vector256<double> ExhaustMass;
    internal Vector256<double> ExhaustEnthalpy;
    internal Vector256<double> InletEnthalpy;
    internal Vector256<double> Heat;
    internal Vector256<double> Work;

    internal void Clear()
    {
        Array.Clear(Air);
        Array.Clear(Back);
        ExhaustMass = ExhaustEnthalpy = InletEnthalpy = Heat = Work = Vector256<double>.Zero;
    }
}
