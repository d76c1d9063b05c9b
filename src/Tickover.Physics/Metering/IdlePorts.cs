using System.Runtime.Intrinsics;

namespace Tickover.Physics.Metering;

/// <summary>Open areas of the idle passage's ports at four openings, m².</summary>
/// <param name="Screw">Annulus under the mixture screw.</param>
/// <param name="Behind">Progression holes behind the plate's edge.</param>
/// <param name="Before">Progression holes before it.</param>
internal readonly record struct IdlePorts(Vector256<double> Screw, Vector256<double> Behind, Vector256<double> Before);
