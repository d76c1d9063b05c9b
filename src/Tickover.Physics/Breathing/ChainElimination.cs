using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Tickover.Physics.Breathing;

/// <summary>
/// The linear system of one chain, (I − a·A) k = r, reduced to the rates of the cylinder's and the port's pressure and of
/// the column's flow. docs/physics/breathing.md (13).
/// </summary>
internal struct ChainElimination
{
    private Vector256<double> _a;
    private Vector256<double> _cylinderPivot;    // 1 / (1 − a s_ic Gic + a s_ec Ge)
    private Vector256<double> _cylinderOnPort;   // β
    private Vector256<double> _intakeOnPort;     // Gip + Gic β
    private Vector256<double> _intakeOnCylinder; // Gic
    private Vector256<double> _exhaustOnCylinder;
    private Vector256<double> _portByIntake;
    private Vector256<double> _portByColumn;
    private Vector256<double> _portPivot;
    private Vector256<double> _columnPivot;
    private Vector256<double> _columnOnPort;
    private Vector256<double> _columnOnInlet;

    /// <summary>Flow rate of the column per unit of rate of the inlet pressure, kg/(s Pa).</summary>
    internal Vector256<double> ColumnPerInlet { get; private set; }

    /// <summary>Prepares the pivots for a step.</summary>
    /// <param name="stage">First stage with slopes.</param>
    /// <param name="gas">Gas constants.</param>
    /// <param name="inverseCylinder">One over the cylinder's volume, 1/m³.</param>
    /// <param name="inversePort">One over the port's volume, 1/m³.</param>
    /// <param name="a">γ times step, s.</param>
    internal void Prepare(
        in ChainStage stage, in GasLanes gas, Vector256<double> inverseCylinder, Vector256<double> inversePort, Vector256<double> a)
    {
        var one = Vector256<double>.One;
        _a = a;
        var byIntake = stage.Cylinder.PressureRate(gas, inverseCylinder, one, stage.IntakeBurnt, stage.IntakeEnthalpy);
        var byExhaust = stage.Cylinder.PressureRate(gas, inverseCylinder, one, stage.ExhaustBurnt, stage.ExhaustEnthalpy);
        _portByIntake = stage.Port.PressureRate(gas, inversePort, one, stage.IntakeBurnt, stage.IntakeEnthalpy);
        _portByColumn = stage.Port.PressureRate(gas, inversePort, one, stage.ColumnBurnt, stage.ColumnEnthalpy);
        _intakeOnCylinder = stage.IntakeOnCylinder;
        _exhaustOnCylinder = stage.ExhaustOnCylinder;
        _cylinderPivot = one / (one - a * byIntake * stage.IntakeOnCylinder + a * byExhaust * stage.ExhaustOnCylinder);
        _cylinderOnPort = a * byIntake * stage.IntakeOnPort * _cylinderPivot;
        _intakeOnPort = stage.IntakeOnPort + stage.IntakeOnCylinder * _cylinderOnPort;
        _columnPivot = one / (one - a * stage.ColumnOnFlow);
        _columnOnPort = a * stage.ColumnOnPort * _columnPivot;
        _columnOnInlet = a * stage.ColumnOnInlet * _columnPivot;
        _portPivot = one / (one + a * _portByIntake * _intakeOnPort - a * _portByColumn * _columnOnPort);
        ColumnPerInlet = _columnOnInlet + _columnOnPort * (_portPivot * a * _portByColumn * _columnOnInlet);
    }

    /// <summary>Rate of the column's flow for a right-hand side with the inlet pressure held.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal readonly Vector256<double> ColumnHeld(Vector256<double> cylinder, Vector256<double> port, Vector256<double> column)
    {
        var alpha = cylinder * _cylinderPivot;
        var free = column * _columnPivot;
        var q = _portPivot * (port - _a * _portByIntake * _intakeOnCylinder * alpha + _a * _portByColumn * free);
        return free + _columnOnPort * q;
    }

    /// <summary>Solves for the corrections of the three flows.</summary>
    /// <param name="cylinder">Rate of the cylinder's pressure from the right-hand side.</param>
    /// <param name="port">Rate of the port's pressure from the right-hand side.</param>
    /// <param name="column">Rate of the column's flow from the right-hand side.</param>
    /// <param name="inlet">Rate of the inlet pressure, zero at ambient.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal readonly ChainCorrection Solve(
        Vector256<double> cylinder, Vector256<double> port, Vector256<double> column, Vector256<double> inlet)
    {
        var alpha = cylinder * _cylinderPivot;
        var free = column * _columnPivot + _columnOnInlet * inlet;
        var q = _portPivot * (port - _a * _portByIntake * _intakeOnCylinder * alpha + _a * _portByColumn * free);
        var flowRate = free + _columnOnPort * q;
        var qc = alpha + _cylinderOnPort * q;
        return new ChainCorrection(
            _intakeOnCylinder * alpha + _intakeOnPort * q, _exhaustOnCylinder * qc, flowRate);
    }
}
