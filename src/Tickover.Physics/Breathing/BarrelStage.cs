using System.Runtime.Intrinsics;

namespace Tickover.Physics.Breathing;

/// <summary>One barrel on a shared volume through both stages of a step.</summary>
internal struct BarrelStage
{
    internal Vector256<double> Flow;
    internal Vector256<double> Enthalpy;
    internal Vector256<double> Burnt;
    internal ColumnRate Rate;
    internal Vector256<double> Pivot;
    internal Vector256<double> K1;
    internal Vector256<double> Star;

    internal Vector256<double> Flow2;
    internal Vector256<double> Enthalpy2;
    internal Vector256<double> Burnt2;
    internal Vector256<double> Rate2;
    internal Vector256<double> Star2;
}
