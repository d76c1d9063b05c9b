using System.Runtime.Intrinsics;

namespace Tickover.Physics.Breathing;

/// <summary>Rate of a column's mass flow and its slopes.</summary>
/// <param name="Rate">kg/s².</param>
/// <param name="OnFlow">Slope on the flow itself, 1/s.</param>
/// <param name="OnInlet">Slope on the inlet pressure, kg/(s² Pa).</param>
/// <param name="OnOutlet">Slope on the outlet pressure, kg/(s² Pa).</param>
internal readonly record struct ColumnRate(
    Vector256<double> Rate, Vector256<double> OnFlow, Vector256<double> OnInlet, Vector256<double> OnOutlet);
