using Tickover.Physics.Air;

namespace Tickover.Physics.Breathing;

/// <summary>The gas exchange of one group over a grid: totals for the map, wave forms for the metering.</summary>
/// <remarks>Immutable once solved; jets do not enter, so a trial of jets reuses it.</remarks>
public sealed class AirSide
{
    private readonly AirPoint[,] _points;
    private readonly AirWave[,] _waves;

    internal AirSide(EngineSpec engine, IntakeGroup group, AmbientAir ambient, OperatingGrid grid, AirPoint[,] points, AirWave[,] waves)
    {
        (Engine, Group, Ambient, Grid) = (engine, group, ambient, grid);
        (_points, _waves) = (points, waves);
    }

    /// <summary>The engine solved.</summary>
    public EngineSpec Engine { get; }

    /// <summary>The group solved.</summary>
    public IntakeGroup Group { get; }

    /// <summary>The air it draws.</summary>
    public AmbientAir Ambient { get; }

    /// <summary>The grid.</summary>
    public OperatingGrid Grid { get; }

    /// <summary>Blocks of four openings that the wave forms are stored in.</summary>
    internal int Blocks => _waves.GetLength(1);

    /// <summary>Totals at a point.</summary>
    /// <param name="speed">Index of the speed.</param>
    /// <param name="throttle">Index of the opening.</param>
    /// <returns>The totals.</returns>
    public AirPoint At(int speed, int throttle) => _points[speed, throttle];

    /// <summary>Flow, depression and pressure behind the plate of a barrel over a cycle, for charts and for checks.</summary>
    /// <param name="speed">Index of the speed.</param>
    /// <param name="throttle">Index of the opening.</param>
    /// <param name="barrel">Barrel within the group, from 0.</param>
    /// <returns>One value a step.</returns>
    public AirTrace Trace(int speed, int throttle, int barrel)
    {
        var wave = _waves[speed, throttle / 4];
        var lane = throttle % 4;
        return new AirTrace(
            [.. wave.Barrels[barrel].Flow.Select(v => v[lane])],
            [.. wave.Barrels[barrel].Depression.Select(v => v[lane])],
            [.. wave.Barrels[barrel].Down.Select(v => v[lane])],
            wave.StepSeconds[lane]);
    }

    internal AirWave Wave(int speed, int block) => _waves[speed, block];
}
