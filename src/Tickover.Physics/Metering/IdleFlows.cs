using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Tickover.Physics.Metering;

/// <summary>Flows of the idle passage at one moment, kg/s, and their slopes on the pressure in it, kg/(s Pa).</summary>
/// <param name="Fuel">Through the idle jet; its slope below is on the pressure drop.</param>
/// <param name="FuelSlope">Slope of the fuel on the drop at the jet.</param>
/// <param name="Air">From the outside into the passage.</param>
/// <param name="AirSlope">Its slope.</param>
/// <param name="ToManifold">Gas-equivalent outflow behind the plate.</param>
/// <param name="ToBarrel">Gas-equivalent outflow before the plate.</param>
/// <param name="OutSlope">Slope of the whole outflow.</param>
internal readonly record struct IdleFlows(
    Vector256<double> Fuel,
    Vector256<double> FuelSlope,
    Vector256<double> Air,
    Vector256<double> AirSlope,
    Vector256<double> ToManifold,
    Vector256<double> ToBarrel,
    Vector256<double> OutSlope)
{
    /// <summary>What flows in less what flows out, and its slope: docs/physics/metering.md (17).</summary>
    /// <remarks>A mixture passes an orifice as the geometric mean of its masses with and without the weight of the fuel.</remarks>
    /// <param name="densityRatio">Air over fuel, 1.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal (Vector256<double> Excess, Vector256<double> Slope) Excess(double densityRatio)
    {
        var heavy = Air + Fuel;
        var light = Air + Fuel * densityRatio;
        var mixture = Vector256.Sqrt(Vector256.Max(heavy * light, Vector256.Create(1e-40)));
        var slope = ((AirSlope - FuelSlope) * light + heavy * (AirSlope - FuelSlope * densityRatio)) / (mixture * 2.0);
        return (mixture - ToManifold - ToBarrel, slope - OutSlope);
    }
}
