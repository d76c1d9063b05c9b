using System.Runtime.Intrinsics;

namespace Tickover.Physics.Flow;

/// <summary>Mass flux of four points and its slopes on the pressures of both sides.</summary>
/// <param name="Flux">kg/(s m²), positive from a to b.</param>
/// <param name="OnA">Slope on the pressure at a, kg/(s m² Pa).</param>
/// <param name="OnB">Slope on the pressure at b, kg/(s m² Pa).</param>
internal readonly record struct LaneFlux(Vector256<double> Flux, Vector256<double> OnA, Vector256<double> OnB);
