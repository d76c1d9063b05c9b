using System.Globalization;
using System.Text;
using Tickover.Physics.Sending;

namespace Tickover.Bench.Gauge;

/// <summary>What the C program of bench/peer/tanks.c reads: one name and its numbers a line, in its order.</summary>
internal static class TankPeerInput
{
    internal static string Write(TwoTanks tanks, RoadTrace trace, (double Left, double Right) start, double every)
    {
        var text = new StringBuilder();
        Tank(text, tanks.Left);
        Tank(text, tanks.Right);
        Pipe(text, tanks);
        Sender(text, tanks);
        Line(text, "start", start.Left, start.Right);
        Line(text, "trace", trace.StepSeconds, every, trace.Samples.Count);
        Line(text, "ahead", [.. trace.Samples.Select(s => s.AheadMetresPerSecondSquared)]);
        Line(text, "left", [.. trace.Samples.Select(s => s.LeftMetresPerSecondSquared)]);
        Line(text, "up", [.. trace.Samples.Select(s => s.UpMetresPerSecondSquared)]);
        return text.ToString();
    }

    private static void Tank(StringBuilder text, LinkedTank tank)
    {
        var table = tank.Table;
        Line(text, "tank", table.CapacityCubicMetres, table.HeightMetres, table.NeckSquareMetres, tank.WidthMetres, tank.LengthMetres, tank.Damping, LevelTable.Layers);
        Line(text, "levels", [.. table.Levels]);
    }

    private static void Pipe(StringBuilder text, TwoTanks tanks)
    {
        var (left, right, pipe) = (tanks.Left, tanks.Right, tanks.Pipe);
        Line(text, "apart", left.AheadMetres - right.AheadMetres, left.LeftMetres - right.LeftMetres, left.FloorMetres - right.FloorMetres);
        Line(text, "pipe", pipe.BoreMetres, pipe.LengthMetres, pipe.ColumnMetres, pipe.RoughnessMetres, pipe.LossToRight, pipe.LossToLeft, pipe.MouthMetres, pipe.MouthInwardMetres);
        Line(text, "fuel", tanks.Fuel.ViscosityPascalSeconds / tanks.Fuel.DensityKilogramsPerCubicMetre, RoadSample.Gravity, SloshMode.LeastDepthMetres);
        var draw = tanks.Draw ?? throw new InvalidOperationException("The peer's tanks burn fuel.");
        Place(text, "pickup", draw.PickUp);
        Line(text, "draw", draw.BurntCubicMetresPerSecond, draw.PickUp.HeightMetres, FuelDraw.CoverMetres);
    }

    private static void Sender(StringBuilder text, TwoTanks tanks)
    {
        var (arm, circuit) = (tanks.Sender.Arm, tanks.Gauge.Circuit);
        Place(text, "sender", tanks.Sender.Place);
        Line(text, "arm", arm.PivotMetres, arm.LengthMetres, arm.LowStopRadians, arm.HighStopRadians);
        Line(text, "gauge", circuit.Sender.EmptyOhms, circuit.Sender.FullOhms, circuit.GaugeOhms, circuit.Volts, GaugeCircuit.PegScale, tanks.Gauge.LagSeconds);
    }

    private static void Place(StringBuilder text, string name, TankPlace place) =>
        Line(text, name, place.Side is TankSide.Left ? 0 : 1, place.AheadMetres, place.LeftMetres);

    private static void Line(StringBuilder text, string name, params double[] numbers)
    {
        text.Append(name);
        foreach (var number in numbers)
        {
            text.Append(' ').Append(number.ToString("R", CultureInfo.InvariantCulture));
        }

        text.Append('\n');
    }
}
