using Tickover.Physics.Sending;

namespace Tickover.Bench.Sending;

/// <summary>A drive made up of straights, bends, hills and stops, the same for the same seed.</summary>
internal static class SyntheticDrive
{
    internal static RoadTrace Make(Random random, double seconds)
    {
        var pieces = new List<RoadPiece>();
        double spent = 0, speed = 0;
        while (spent < seconds)
        {
            var stop = random.NextDouble() < 0.07;
            var next = stop ? 0 : 6 + 22 * random.NextDouble();
            var change = 3 + Math.Abs(next - speed) / (1 + 1.5 * random.NextDouble());
            var slope = 0.12 * (random.NextDouble() - 0.5) * random.NextDouble();
            pieces.Add(new RoadPiece(change, speed, next, 0, slope, 0));
            speed = next;
            var stay = 4 + 25 * random.NextDouble() * random.NextDouble();
            var bend = speed > 0 && random.NextDouble() < 0.7 ? (random.NextDouble() < 0.5 ? -1 : 1) * (1 + 3 * random.NextDouble()) / (speed * speed) : 0;
            pieces.Add(new RoadPiece(stay, speed, speed, bend, slope, 0.04 * (random.NextDouble() - 0.5)));
            spent += change + stay;
        }

        return DrawnRoad.Of(pieces);
    }

    internal static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
