using Tickover.Physics.Gauges;
using Tickover.Physics.Sending;

namespace Tickover.Bench.Gauge;

/// <summary>The tanks of the studies: two of 25 litres behind the wheels, a pipe of 10 mm, one sender outboard on the left.</summary>
internal static class StudyTanks
{
    internal const double Litre = 1e-3;

    internal static TwoTanks Tern { get; } = new(Tank(0.52), Tank(-0.52), new CrossPipe { BoreMetres = 0.010, LengthMetres = 0.9, LossToLeft = 2.5, LossToRight = 2.5, MouthInwardMetres = 0.12 })
    {
        Sender = new TankSender(new TankPlace(TankSide.Left, 0, 0.08, 0), FloatArm.Between(0.12, 0.18, 0.02, 0.24)),
        Gauge = new FuelGauge { Circuit = new GaugeCircuit { Sender = new SenderFamily(275, 20) } },
        Draw = new FuelDraw { PickUp = new TankPlace(TankSide.Right, 0, 0, 0.008), BurntCubicMetresPerSecond = 12 * Litre / 3600, ReturnCubicMetresPerSecond = 0, ReturnSide = TankSide.Right },
    };

    private static LinkedTank Tank(double left) => new()
    {
        Table = LevelTable.FromAreas([0, 0.03, 0.10, 0.25], [0.080, 0.088, 0.100, 0.104]),
        LeftMetres = left,
        WidthMetres = 0.34,
        LengthMetres = 0.32,
    };
}
