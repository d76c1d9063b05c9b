using System.Runtime.Intrinsics;

namespace Tickover.Physics.Metering;

/// <summary>One pass over the cycle.</summary>
/// <param name="Start">Fuel flow at its start, kg/s.</param>
/// <param name="End">Fuel flow at its end, kg/s.</param>
/// <param name="Next">Fuel flow from which the next pass should start, kg/s.</param>
/// <param name="StartSag">How far the fuel hung below the lip at its start, m.</param>
/// <param name="Sag">The same at its end, m.</param>
/// <param name="EndAir">Air flow at its end, kg/s.</param>
/// <param name="EndIdeal">Ideal velocity in the jet at its end, m/s.</param>
/// <param name="Fuel">Mean fuel that leaves the nozzle, kg/s.</param>
/// <param name="Air">Mean air, kg/s.</param>
/// <param name="Level">Level that these flows would hold, m.</param>
/// <param name="PeakDrop">Largest drop at the jet, Pa.</param>
/// <param name="MeanDrop">Mean drop at the jet, Pa.</param>
internal readonly record struct MainPass(
    Vector256<double> Start, Vector256<double> End, Vector256<double> Next, Vector256<double> StartSag, Vector256<double> Sag, Vector256<double> EndAir, Vector256<double> EndIdeal, Vector256<double> Fuel, Vector256<double> Air, Vector256<double> Level, Vector256<double> PeakDrop, Vector256<double> MeanDrop);
