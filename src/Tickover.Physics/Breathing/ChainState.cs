using System.Runtime.Intrinsics;

namespace Tickover.Physics.Breathing;

/// <summary>State of one cylinder with its port and column at four operating points; also used for rates.</summary>
internal struct ChainState
{
    /// <summary>Components of the state.</summary>
    internal const int Components = 7;

    internal Vector256<double> CylinderMass;
    internal Vector256<double> CylinderBurnt;
    internal Vector256<double> CylinderEnergy;
    internal Vector256<double> PortMass;
    internal Vector256<double> PortBurnt;
    internal Vector256<double> PortEnergy;
    internal Vector256<double> Flow;

    /// <summary>This plus another times a factor.</summary>
    internal readonly ChainState Plus(in ChainState rate, Vector256<double> factor) => new()
    {
        CylinderMass = CylinderMass + rate.CylinderMass * factor,
        CylinderBurnt = CylinderBurnt + rate.CylinderBurnt * factor,
        CylinderEnergy = CylinderEnergy + rate.CylinderEnergy * factor,
        PortMass = PortMass + rate.PortMass * factor,
        PortBurnt = PortBurnt + rate.PortBurnt * factor,
        PortEnergy = PortEnergy + rate.PortEnergy * factor,
        Flow = Flow + rate.Flow * factor,
    };

    internal readonly double Get(int component, int lane) => component switch
    {
        0 => CylinderMass[lane],
        1 => CylinderBurnt[lane],
        2 => CylinderEnergy[lane],
        3 => PortMass[lane],
        4 => PortBurnt[lane],
        5 => PortEnergy[lane],
        _ => Flow[lane],
    };

    internal void Set(int component, int lane, double value)
    {
        switch (component)
        {
            case 0: CylinderMass = CylinderMass.WithElement(lane, value); break;
            case 1: CylinderBurnt = CylinderBurnt.WithElement(lane, value); break;
            case 2: CylinderEnergy = CylinderEnergy.WithElement(lane, value); break;
            case 3: PortMass = PortMass.WithElement(lane, value); break;
            case 4: PortBurnt = PortBurnt.WithElement(lane, value); break;
            case 5: PortEnergy = PortEnergy.WithElement(lane, value); break;
            default: Flow = Flow.WithElement(lane, value); break;
        }
    }
}
