using System.Runtime.Intrinsics;

namespace Tickover.Physics.Breathing;

/// <summary>Corrections the implicit part of a stage makes.</summary>
/// <param name="Intake">Rate of the inlet valve's flow, kg/s².</param>
/// <param name="Exhaust">Rate of the exhaust valve's flow, kg/s².</param>
/// <param name="Column">Rate of the column's flow itself (k of the column), kg/s².</param>
internal readonly record struct ChainCorrection(Vector256<double> Intake, Vector256<double> Exhaust, Vector256<double> Column);
