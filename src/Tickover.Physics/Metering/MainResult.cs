using System.Runtime.Intrinsics;

namespace Tickover.Physics.Metering;

/// <summary>Main circuit over a cycle at four operating points.</summary>
/// <param name="Fuel">Mean fuel, kg/s.</param>
/// <param name="Air">Mean air through the corrector, kg/s.</param>
/// <param name="Level">Level in the emulsion tube against the level at rest, m.</param>
/// <param name="PeakDrop">Largest pressure drop at the jet, Pa.</param>
/// <param name="MeanDrop">Mean pressure drop at the jet, Pa.</param>
/// <param name="RestDrop">Pressure drop at the jet by the idle circuit's fuel alone, Pa.</param>
/// <param name="Settled">Lanes whose level balances.</param>
internal readonly record struct MainResult(
    Vector256<double> Fuel, Vector256<double> Air, Vector256<double> Level, Vector256<double> PeakDrop, Vector256<double> MeanDrop, Vector256<double> RestDrop, Vector256<double> Settled);
