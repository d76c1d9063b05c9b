using System.Runtime.Intrinsics;

namespace Tickover.Physics.Breathing;

/// <summary>Wave forms of four operating points over a cycle, as the metering reads them.</summary>
/// <param name="Barrels">One set of signals a barrel.</param>
/// <param name="StepSeconds">Length of a step, s.</param>
internal sealed record AirWave(BarrelSignals[] Barrels, Vector256<double> StepSeconds);
