using Tickover.Physics.Air;

namespace Tickover.Physics.Breathing;

/// <summary>Solves the gas exchange of a group of barrels and cylinders over a grid of speeds and openings.</summary>
public static class AirSideSolver
{
    private const int Lanes = 4;
    private const int Levels = 3;   // steps may be halved twice

    /// <summary>Solves every point of the grid to its periodic state.</summary>
    /// <param name="engine">Engine, SI.</param>
    /// <param name="group">Barrels and cylinders to solve.</param>
    /// <param name="ambient">Air drawn.</param>
    /// <param name="grid">Speeds above zero, openings zero or above.</param>
    /// <param name="settings">Step, tolerance, workers.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The air side; points that did not settle say so.</returns>
    /// <exception cref="ArgumentException">A speed or opening is outside its range.</exception>
    public static AirSide Solve(
        EngineSpec engine, IntakeGroup group, AmbientAir ambient, OperatingGrid grid, AirSideSettings? settings = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(group);
        ArgumentNullException.ThrowIfNull(grid);
        Check(grid);
        settings ??= new AirSideSettings();
        GroupSetting[] levels =
        [
            .. Enumerable.Range(0, Levels).Select(l => GroupSetting.For(engine, group, new CycleTables(engine, settings.StepsPerCycle << l))),
        ];
        var (speeds, throttles) = (grid.SpeedsRpm.Count, grid.ThrottleDegrees.Count);
        var blocks = (throttles + Lanes - 1) / Lanes;
        var points = new AirPoint[speeds, throttles];
        var waves = new AirWave[speeds, blocks];
        var strips = Strips(speeds, blocks);
        Parallel.For(
            0,
            strips.Count,
            new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, settings.Workers), CancellationToken = cancellation },
            s =>
            {
                var (block, from, to) = strips[s];
                var strip = new AirStrip(levels, ambient, grid, settings, block);
                for (var i = from; i < to; i++)
                {
                    cancellation.ThrowIfCancellationRequested();
                    waves[i, block] = strip.Solve(i, points);
                }
            });
        return new AirSide(engine, group, ambient, grid, points, waves);
    }

    // Neighbouring speeds start from each other's answer. Where strips are cut does not depend on the number of workers,
    // so that neither does the answer.
    private static List<(int Block, int From, int To)> Strips(int speeds, int blocks)
    {
        const int longest = 12;
        var strips = new List<(int, int, int)>();
        for (var block = 0; block < blocks; block++)
        {
            for (var from = 0; from < speeds; from += longest)
            {
                strips.Add((block, from, Math.Min(from + longest, speeds)));
            }
        }

        return strips;
    }

    private static void Check(OperatingGrid grid)
    {
        foreach (var rpm in grid.SpeedsRpm)
        {
            if (!(rpm > 0) || !double.IsFinite(rpm))
            {
                throw new ArgumentOutOfRangeException(nameof(grid), rpm, "speeds are finite and above zero");
            }
        }

        foreach (var degrees in grid.ThrottleDegrees)
        {
            if (!(degrees >= 0) || !double.IsFinite(degrees))
            {
                throw new ArgumentOutOfRangeException(nameof(grid), degrees, "openings are finite and zero or above");
            }
        }
    }
}
