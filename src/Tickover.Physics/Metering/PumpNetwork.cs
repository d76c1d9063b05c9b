using System.Runtime.Intrinsics;
using Tickover.Physics.Air;
using Tickover.Physics.Flow;
using Tickover.Physics.Fuels;

namespace Tickover.Physics.Metering;

/// <summary>What steady air pulls over through the pump jet: metering (19).</summary>
internal sealed class PumpNetwork
{
    private const double StandardGravity = 9.80665;

    private readonly JetLanes _jet;
    private readonly double _head;
    private readonly double _boreHead;
    private readonly double _share;

    internal PumpNetwork(PumpCircuit pump, BarrelSpec barrel, AmbientAir ambient, FuelProperties fuel)
    {
        const double jetLengthRatio = 3;
        _jet = new JetLanes(pump.JetDiameterMetres, jetLengthRatio, fuel);
        _head = fuel.DensityKilogramsPerCubicMetre * StandardGravity * pump.LiftMetres + pump.CheckOpeningPascals
            - barrel.Float.VentPressureRisePascals;
        var bore = Circle.Area(barrel.AirWay.ThrottleBoreMetres);
        _boreHead = 0.5 / (ambient.DensityKilogramsPerCubicMetre * bore * bore);

        // an open back-bleed lets air in and halves, quarters... the suction by the ratio of areas squared
        var jet = pump.JetDiameterMetres * pump.JetDiameterMetres;
        var bleed = pump.BleedDiameterMetres * pump.BleedDiameterMetres;
        _share = jet * jet / (jet * jet + bleed * bleed);
    }

    /// <summary>Mean fuel pulled over, kg/s, by the velocity head of the air at the pump nozzle.</summary>
    internal Vector256<double> Solve(Vector256<double>[] flow)
    {
        var sum = Vector256<double>.Zero;
        foreach (var w in flow)
        {
            sum += _jet.Flow(w * w * (_boreHead * _share) - Vector256.Create(_head)).Flow;
        }

        return sum / flow.Length;
    }
}
