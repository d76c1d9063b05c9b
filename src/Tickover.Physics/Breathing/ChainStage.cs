using System.Runtime.Intrinsics;

namespace Tickover.Physics.Breathing;

/// <summary>One stage of the integrator for one cylinder chain: flows, what they carry, and the slopes of the first stage.</summary>
internal struct ChainStage
{
    internal GasVolume Cylinder;
    internal GasVolume Port;

    internal Vector256<double> Intake;           // port to cylinder, kg/s
    internal Vector256<double> IntakeEnthalpy;
    internal Vector256<double> IntakeBurnt;
    internal Vector256<double> Exhaust;          // cylinder to exhaust, kg/s
    internal Vector256<double> ExhaustEnthalpy;
    internal Vector256<double> ExhaustBurnt;
    internal Vector256<double> Column;           // into the port, kg/s
    internal Vector256<double> ColumnEnthalpy;
    internal Vector256<double> ColumnBurnt;
    internal Vector256<double> ColumnRate;
    internal Vector256<double> Burn;             // fresh gas burnt, kg/s
    internal Vector256<double> Heat;             // into the cylinder: release less walls, W
    internal Vector256<double> Work;             // p dV/dt, W

    internal Vector256<double> ExhaustStar;      // flow the first stage really takes, kg/s
    internal Vector256<double> InverseVolume;    // of the cylinder, 1/m³

    // slopes, first stage only
    internal Vector256<double> IntakeOnPort;
    internal Vector256<double> IntakeOnCylinder;
    internal Vector256<double> ExhaustOnCylinder;
    internal Vector256<double> ColumnOnFlow;
    internal Vector256<double> ColumnOnInlet;
    internal Vector256<double> ColumnOnPort;

    // elimination, first stage only: see ChainElimination
    internal ChainElimination Elimination;

    /// <summary>Rates of the state from the flows of this stage.</summary>
    internal readonly ChainState Rates() => new()
    {
        CylinderMass = Intake - Exhaust,
        CylinderBurnt = Intake * IntakeBurnt - Exhaust * ExhaustBurnt + Burn,
        CylinderEnergy = Intake * IntakeEnthalpy - Exhaust * ExhaustEnthalpy + Heat - Work,
        PortMass = Column - Intake,
        PortBurnt = Column * ColumnBurnt - Intake * IntakeBurnt,
        PortEnergy = Column * ColumnEnthalpy - Intake * IntakeEnthalpy,
        Flow = ColumnRate,
    };

    /// <summary>Rates that corrections of the three flows add: the approximate Jacobian in flux form, so that mass and energy still close.</summary>
    internal readonly ChainState Carried(Vector256<double> intake, Vector256<double> exhaust, Vector256<double> column) => new()
    {
        CylinderMass = intake - exhaust,
        CylinderBurnt = intake * IntakeBurnt - exhaust * ExhaustBurnt,
        CylinderEnergy = intake * IntakeEnthalpy - exhaust * ExhaustEnthalpy,
        PortMass = column - intake,
        PortBurnt = column * ColumnBurnt - intake * IntakeBurnt,
        PortEnergy = column * ColumnEnthalpy - intake * IntakeEnthalpy,
        Flow = Vector256<double>.Zero,
    };
}
