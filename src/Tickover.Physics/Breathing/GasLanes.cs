using System.Runtime.Intrinsics;

namespace Tickover.Physics.Breathing;

/// <summary>Gas constants broadcast to four lanes.</summary>
internal readonly struct GasLanes(double gasConstant)
{
    internal readonly Vector256<double> GasConstant = Vector256.Create(gasConstant);
    internal readonly Vector256<double> Fresh = Vector256.Create(GasModel.FreshHeat(gasConstant));
    internal readonly Vector256<double> Burnt = Vector256.Create(GasModel.BurntHeat(gasConstant));
    internal readonly Vector256<double> Reference = Vector256.Create(GasModel.ReferenceTemperatureKelvin);
}
