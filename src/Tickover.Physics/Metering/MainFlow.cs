using System.Runtime.Intrinsics;

namespace Tickover.Physics.Metering;

/// <summary>The main network at one moment.</summary>
/// <param name="Air">Air through the corrector, kg/s.</param>
/// <param name="AirDrop">Pressure it loses in corrector and holes, Pa.</param>
/// <param name="Loss">Loss of the nozzle, Pa.</param>
/// <param name="LossSlope">Slope of that loss on the fuel flow with the air following, Pa s/kg.</param>
internal readonly record struct MainFlow(
    Vector256<double> Air, Vector256<double> AirDrop, Vector256<double> Loss, Vector256<double> LossSlope);
