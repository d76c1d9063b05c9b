using System.Runtime.Intrinsics;
using Tickover.Physics.Breathing;
using Tickover.Physics.Fuels;

namespace Tickover.Physics.Metering;

/// <summary>Solves the fuel circuits of a barrel on an air side that is already solved.</summary>
public static class FuelSideSolver
{
    private const int Lanes = 4;

    /// <summary>Solves every point of the air side's grid.</summary>
    /// <param name="air">The gas exchange; its barrel must have the same air way as <paramref name="barrel"/>.</param>
    /// <param name="barrelInGroup">Which barrel of the group, from 0.</param>
    /// <param name="barrel">The barrel with the jets to try.</param>
    /// <param name="fuel">Fuel at its temperature.</param>
    /// <param name="settings">How; null for the defaults.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The points, [speed, throttle].</returns>
    /// <exception cref="ArgumentException">The air way differs from the one solved.</exception>
    public static FuelPoint[,] Solve(
        AirSide air,
        int barrelInGroup,
        BarrelSpec barrel,
        FuelProperties fuel,
        FuelSideSettings? settings = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(barrel);
        ArgumentNullException.ThrowIfNull(fuel);
        var how = settings ?? new FuelSideSettings();
        Precondition.Positive(how.DepressionFactor);
        if (barrel.AirWay != air.Engine.Barrels[air.Group.Barrels[barrelInGroup]].AirWay)
        {
            throw new ArgumentException("the air way of the barrel is not the one the air side was solved for", nameof(barrel));
        }

        var points = new FuelPoint[air.Grid.SpeedsRpm.Count, air.Grid.ThrottleDegrees.Count];
        Parallel.For(
            0,
            air.Blocks,
            new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, how.Workers), CancellationToken = cancellation },
            block => SolveBlock(air, barrelInGroup, (barrel, fuel, how), block, points));
        return points;
    }

    private static void SolveBlock(
        AirSide air, int barrelInGroup, (BarrelSpec Barrel, FuelProperties Fuel, FuelSideSettings How) with, int block, FuelPoint[,] points)
    {
        var (barrel, fuel, how) = with;
        var main = new MainNetwork(barrel, air.Ambient, fuel, how.StepsPerCycle);
        var both = new SharedJet(main, new IdleNetwork(barrel, air.Ambient, fuel), barrel.Idle.MainWellShare, how.StepsPerCycle);
        var pump = barrel.Pump is null ? null : new PumpNetwork(barrel.Pump, barrel, air.Ambient, fuel);
        Span<double> openings = stackalloc double[Lanes];
        for (var l = 0; l < Lanes; l++)
        {
            openings[l] = air.Grid.ThrottleDegrees[Math.Min(block * Lanes + l, air.Grid.ThrottleDegrees.Count - 1)] * Math.PI / 180;
        }

        for (var i = 0; i < air.Grid.SpeedsRpm.Count; i++)
        {
            var wave = air.Wave(i, block);
            var signals = wave.Barrels[barrelInGroup];
            var depression = Scaled(signals.Depression, how.DepressionFactor);
            var (mainResult, idleResult) = both.Solve(depression, signals, wave.StepSeconds, openings);
            var pulled = pump?.Solve(signals.Flow) ?? Vector256<double>.Zero;
            for (var l = 0; l < Lanes && block * Lanes + l < air.Grid.ThrottleDegrees.Count; l++)
            {
                points[i, block * Lanes + l] = Point(signals, depression, main, (mainResult, idleResult, pulled), l);
            }
        }
    }

    private static Vector256<double>[] Scaled(Vector256<double>[] depression, double factor) =>
        factor == 1 ? depression : Array.ConvertAll(depression, d => d * factor);

    private static FuelPoint Point(
        BarrelSignals signals,
        Vector256<double>[] depression,
        MainNetwork main,
        in (MainResult Main, IdleResult Idle, Vector256<double> Pulled) flows,
        int lane)
    {
        var (fuel, idle, pulled) = flows;
        var (mean, peak, behind, air) = (0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < signals.Steps; i++)
        {
            var d = depression[i][lane];
            mean += d;
            peak = Math.Max(peak, d);
            behind += signals.Down[i][lane];
            air = Math.Max(air, signals.Flow[i][lane]);
        }

        return new FuelPoint
        {
            MainKilogramsPerSecond = fuel.Fuel[lane],
            IdleKilogramsPerSecond = idle.Screw[lane],
            ProgressionKilogramsPerSecond = idle.Holes[lane],
            PumpKilogramsPerSecond = pulled[lane],
            CorrectorAirKilogramsPerSecond = fuel.Air[lane],
            IdleAirKilogramsPerSecond = idle.Air[lane],
            LevelDropMetres = Math.Max(0, -fuel.Level[lane]),
            AllRowsUncovered = main.AllUncovered(fuel.Level[lane]),
            MeanDepressionPascals = mean / signals.Steps,
            PeakDepressionPascals = peak,
            ManifoldPressurePascals = behind / signals.Steps,
            IdleDropPascals = fuel.RestDrop[lane],
            MainJetReynolds = main.Reynolds(fuel.PeakDrop[lane]),
            PeakAirKilogramsPerSecond = air,
            Settled = BitConverter.DoubleToInt64Bits(fuel.Settled[lane]) != 0,
        };
    }
}
