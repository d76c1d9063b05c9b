using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Tickover.Physics.Breathing;

/// <summary>State of a volume at four operating points: mass, burnt mass and internal energy, and what follows from them.</summary>
/// <remarks>docs/physics/breathing.md (1) to (3).</remarks>
internal struct GasVolume
{
    internal Vector256<double> Mass;
    internal Vector256<double> Burnt;
    internal Vector256<double> Energy;

    internal Vector256<double> HeatCapacity;
    internal Vector256<double> Temperature;
    internal Vector256<double> Pressure;
    internal Vector256<double> GasTemperature; // R T, J/kg
    internal Vector256<double> BurntFraction;
    internal Vector256<double> Enthalpy;

    /// <summary>Computes temperature, pressure and enthalpy in a volume of one over <paramref name="inverseVolume"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Update(in GasLanes gas, Vector256<double> inverseVolume)
    {
        HeatCapacity = gas.Fresh * (Mass - Burnt) + gas.Burnt * Burnt;
        var above = Energy / HeatCapacity;
        Temperature = above + gas.Reference;
        GasTemperature = Temperature * gas.GasConstant;
        Pressure = Mass * GasTemperature * inverseVolume;
        BurntFraction = Burnt / Mass;
        Enthalpy = HeatCapacity / Mass * above + GasTemperature;
    }

    /// <summary>Rate of pressure that goes with rates of mass, burnt mass and energy at fixed volume: breathing (12).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal readonly Vector256<double> PressureRate(
        in GasLanes gas, Vector256<double> inverseVolume, Vector256<double> mass, Vector256<double> burnt, Vector256<double> energy)
    {
        var capacity = gas.Fresh * (mass - burnt) + gas.Burnt * burnt;
        var temperature = (energy - (Temperature - gas.Reference) * capacity) / HeatCapacity;
        return gas.GasConstant * inverseVolume * (Temperature * mass + Mass * temperature);
    }
}
