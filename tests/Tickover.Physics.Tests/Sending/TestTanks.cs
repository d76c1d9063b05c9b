using Tickover.Physics.Gauges;
using Tickover.Physics.Sending;

namespace Tickover.Physics.Tests.Sending;

/// <summary>Tanks for the tests: boxes of 0.06 m², a pipe of 25 mm without friction where nothing else is said.</summary>
internal static class TestTanks
{
    internal static TwoTanks Plain(double leftArea = 0.06, double rightArea = 0.06, CrossPipe? pipe = null) =>
        new(Box(leftArea, 0.5), Box(rightArea, -0.5), pipe ?? Pipe(0))
        {
            Sender = new TankSender(new TankPlace(TankSide.Left, 0, 0, 0), FloatArm.Between(0.5, 0.8, 0, 1)),
            Gauge = new FuelGauge { Circuit = new GaugeCircuit { Sender = SenderFamily.Of("240-33")! } },
        };

    internal static CrossPipe Pipe(double loss, double bore = 0.025, double length = 0.8, double friction = 0) =>
        new() { BoreMetres = bore, LengthMetres = length, FrictionFactor = friction, LossToLeft = loss, LossToRight = loss, EndCorrected = false };

    internal static double Difference(TwoTanks tanks, SendingMoment m) =>
        tanks.Left.Table.LevelOf(m.LeftCubicMetres) - tanks.Right.Table.LevelOf(m.RightCubicMetres);

    private static LinkedTank Box(double area, double left) => new()
    {
        Table = LevelTable.Box(area, 1),
        LeftMetres = left,
        WidthMetres = 0.3,
        LengthMetres = area / 0.3,
    };
}
