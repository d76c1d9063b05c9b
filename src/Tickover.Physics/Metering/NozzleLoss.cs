using System.Runtime.Intrinsics;

namespace Tickover.Physics.Metering;

/// <summary>Pressure loss of the nozzle passage and its slopes.</summary>
/// <param name="Loss">Pa.</param>
/// <param name="OnFuel">Slope on the fuel flow, Pa s/kg.</param>
/// <param name="OnAir">Slope on the air flow, Pa s/kg.</param>
internal readonly record struct NozzleLoss(Vector256<double> Loss, Vector256<double> OnFuel, Vector256<double> OnAir);
