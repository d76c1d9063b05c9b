using System.Runtime.Intrinsics;

namespace Tickover.Physics.Metering;

/// <summary>Idle and progression circuit over a cycle at four operating points, means in kg/s.</summary>
/// <param name="Screw">Fuel past the mixture screw.</param>
/// <param name="Holes">Fuel through the progression holes.</param>
/// <param name="Air">Air through bleed and holes into the passage.</param>
/// <param name="PeakDrop">Largest pressure drop at the idle jet, Pa.</param>
internal readonly record struct IdleResult(
    Vector256<double> Screw, Vector256<double> Holes, Vector256<double> Air, Vector256<double> PeakDrop);
