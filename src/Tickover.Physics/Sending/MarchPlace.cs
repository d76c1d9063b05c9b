using System.Runtime.CompilerServices;

namespace Tickover.Physics.Sending;

/// <summary>A place in a tank on the march, with how much of each wave stands there.</summary>
internal sealed class MarchPlace
{
    private readonly MarchTank _tank;
    private readonly double _ahead;
    private readonly double _left;
    private readonly double _acrossShape;
    private readonly double _alongShape;

    internal MarchPlace(MarchTank tank, TankPlace place)
    {
        (_tank, _ahead, _left) = (tank, place.AheadMetres, place.LeftMetres);
        (_acrossShape, _alongShape) = (Math.Sin(Math.PI * _left / tank.Width), Math.Sin(Math.PI * _ahead / tank.Length));
    }

    /// <summary>Depth of fuel here, with the waves.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal double LevelAt(double across, double along)
    {
        var level = _tank.Plane - across * _left - along * _ahead + _acrossShape * _tank.AcrossWave + _alongShape * _tank.AlongWave; // sending (3)
        return level <= 0 ? 0 : Math.Min(level, _tank.Ceiling);
    }
}
