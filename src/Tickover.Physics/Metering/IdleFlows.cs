using System.Runtime.Intrinsics;

namespace Tickover.Physics.Metering;

/// <summary>Flows of the idle passage at one moment, kg/s.</summary>
/// <param name="Fuel">Through the idle jet.</param>
/// <param name="Air">From the outside into the passage.</param>
/// <param name="ToManifold">Gas-equivalent outflow behind the plate.</param>
/// <param name="ToBarrel">Gas-equivalent outflow before the plate.</param>
internal readonly record struct IdleFlows(
    Vector256<double> Fuel, Vector256<double> Air, Vector256<double> ToManifold, Vector256<double> ToBarrel);
