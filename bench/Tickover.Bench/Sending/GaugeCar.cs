using Tickover.Physics.Sending;

namespace Tickover.Bench.Sending;

/// <summary>The pair of tanks that speed and estimate are measured on: the demo's, in round figures.</summary>
internal static class GaugeCar
{
    internal const double Every = 0.1;

    private static readonly SenderFamily Family = new(240, 33);

    internal static LevelTable Table { get; } = LevelTable.FromAreas([(0, 0.08), (0.05, 0.105), (0.23, 0.12)]);

    internal static TwoTanks Pair { get; } = new(
        Tank(0.45), Tank(-0.45), new CrossPipe { BoreMetres = 0.012, LengthMetres = 1.2 })
    {
        Draw = new FuelDraw { BurntCubicMetresPerSecond = 3e-6, PickUpSide = TankSide.Right },
        Fitting = new SenderFitting
        {
            First = new TankSender(TankSide.Left, new TankPlace(0.05, 0.02, 0), new FloatArm { PivotMetres = 0.12, LengthMetres = 0.14, LowestMetres = 0.02, HighestMetres = 0.21, Family = Family }),
            Gauge = new GaugeCircuit { Family = Family },
            Lamp = new LowLamp(0.04, 0),
        },
    };

    internal static LinkedTank Tank(double left) => new() { Table = Table, WidthMetres = 0.28, LengthMetres = 0.38, LeftMetres = left };
}
