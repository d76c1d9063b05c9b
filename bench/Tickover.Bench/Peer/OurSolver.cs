using System.Diagnostics;
using Tickover.Physics.Air;
using Tickover.Physics.Breathing;
using Tickover.Physics.Fuels;
using Tickover.Physics.Metering;

namespace Tickover.Bench.Peer;

/// <summary>The product's solver on the peer's operating points.</summary>
internal sealed class OurSolver(EngineSpec engine, AmbientAir ambient, FuelProperties fuel)
{
    private const int Barrel = 0;

    internal List<PeerPoint> Solve(AirSideSettings settings)
    {
        var points = new List<PeerPoint>();
        foreach (var grid in PeerGrids.All)
        {
            var air = AirSideSolver.Solve(engine, engine.Groups[Barrel], ambient, grid, settings);
            var flows = FuelSideSolver.Solve(air, 0, engine.Barrels[Barrel], fuel, new FuelSideSettings { Workers = settings.Workers });
            for (var i = 0; i < grid.SpeedsRpm.Count; i++)
            {
                for (var j = 0; j < grid.ThrottleDegrees.Count; j++)
                {
                    points.Add(Point(grid.SpeedsRpm[i], grid.ThrottleDegrees[j], air.At(i, j), flows[i, j]));
                }
            }
        }

        return points;
    }

    /// <summary>Seconds for all points, by the wall and by the processor's clock: medians of several runs in a warm program.</summary>
    internal (double Wall, double Processor) Seconds(AirSideSettings settings, int runs)
    {
        var (wall, processor) = (new double[runs], new double[runs]);
        using var self = Process.GetCurrentProcess();
        for (var k = 0; k < runs; k++)
        {
            self.Refresh();
            var (begin, used) = (Stopwatch.GetTimestamp(), self.TotalProcessorTime);
            Solve(settings);
            wall[k] = Stopwatch.GetElapsedTime(begin).TotalSeconds;
            self.Refresh();
            processor[k] = (self.TotalProcessorTime - used).TotalSeconds;
        }

        Array.Sort(wall);
        Array.Sort(processor);
        return (wall[runs / 2], processor[runs / 2]);
    }

    private static PeerPoint Point(double rpm, double degrees, AirPoint air, FuelPoint fuel)
    {
        var cycle = 120 / rpm;
        return new PeerPoint
        {
            Rpm = rpm,
            Degrees = degrees,
            Air = air.AirKilogramsPerCycle[0],
            Main = fuel.MainKilogramsPerSecond * cycle,
            Idle = (fuel.IdleKilogramsPerSecond + fuel.ProgressionKilogramsPerSecond) * cycle,
            Pump = fuel.PumpKilogramsPerSecond * cycle,
            Settled = air.Settled && fuel.Settled,
            Cycles = air.Cycles,
        };
    }
}
