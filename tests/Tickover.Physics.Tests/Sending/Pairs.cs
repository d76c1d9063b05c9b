using Tickover.Physics.Sending;

namespace Tickover.Physics.Tests.Sending;

/// <summary>Tanks to test with.</summary>
internal static class Pairs
{
    private static readonly FloatArm Arm = new() { PivotMetres = 0.12, LengthMetres = 0.14, LowestMetres = 0.02, HighestMetres = 0.21, Family = new SenderFamily(240, 33) };

    internal static TwoTanks Plain(double area = 0.06, double bore = 0.025, double length = 0.8, double loss = 2.5, double height = 1, double? factor = 0) =>
        new(Tank(area, height, 0), Tank(area, height, 0), new CrossPipe { BoreMetres = bore, LengthMetres = length, LossToRight = loss, LossToLeft = loss, EndCorrectionBores = 0, FrictionFactor = factor })
        {
            Gravity = 9.81,
        };

    internal static LinkedTank Tank(double area, double height, double left) =>
        new() { Table = LevelTable.Upright(area, height), WidthMetres = 0.3, LengthMetres = 0.4, LeftMetres = left };

    internal static TwoTanks Car(double bore = 0.010, double tau = 12) => new(
        Tank(0.11, 0.23, 0.45) with { Table = LevelTable.FromAreas([(0, 0.08), (0.05, 0.105), (0.23, 0.12)]) },
        Tank(0.11, 0.23, -0.45) with { Table = LevelTable.FromAreas([(0, 0.08), (0.05, 0.105), (0.23, 0.12)]) },
        new CrossPipe { BoreMetres = bore, LengthMetres = 1.2 })
    {
        Draw = new FuelDraw { BurntCubicMetresPerSecond = 3e-6, PickUpSide = TankSide.Right },
        Fitting = new SenderFitting
        {
            First = new TankSender(TankSide.Left, new TankPlace(0.05, 0.02, 0), Arm),
            Gauge = new GaugeCircuit { Family = new SenderFamily(240, 33), TimeConstantSeconds = tau },
            Lamp = new LowLamp(0.04, 0),
        },
    };

    internal static double Difference(TankMoments m, int i) => m.LeftLevels[i] - m.RightLevels[i];
}
