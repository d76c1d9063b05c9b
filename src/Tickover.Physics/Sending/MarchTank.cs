using System.Runtime.CompilerServices;

namespace Tickover.Physics.Sending;

/// <summary>A tank on the march.</summary>
internal sealed class MarchTank
{
    private const double LeastAir = 1e-5;                  // m³ of air left in a tank that is as good as full
    private const double UntunedDepth = double.NegativeInfinity;

    private readonly double[] _nodes;
    private readonly double _perVolume;
    private readonly double _capacity;
    private readonly double _height;
    private readonly double _neck;
    private readonly double _width;
    private readonly double _length;
    private readonly bool _sealed;
    private readonly double _air;
    private SloshMode _across;
    private SloshMode _along;
    private double _tuned = UntunedDepth;
    private double _level;
    private (double Left, double Ahead, double AcrossShape, double AlongShape) _shape = (double.NaN, 0, 0, 0);
    private (double Left, double Ahead, double AcrossShape, double AlongShape) _other = (double.NaN, 0, 0, 0);

    internal MarchTank(LinkedTank tank, double volume, double step, bool isSealed)
    {
        (_nodes, _capacity, _height, _neck) = (tank.Table.Nodes, tank.Table.CapacityCubicMetres, tank.Table.HeightMetres, tank.Table.NeckSquareMetres);
        _perVolume = LevelTable.Layers / _capacity;
        (_width, _length) = (tank.WidthMetres, tank.LengthMetres);
        (_sealed, _air, Volume) = (isSealed, Math.Max(LeastAir, _capacity - volume), volume);
        _across = new SloshMode(_width, tank.Damping, step);
        _along = new SloshMode(_length, tank.Damping, step);
    }

    internal double Volume { get; set; }

    /// <summary>Surface over the middle of the floor as it lies now.</summary>
    internal double Plane { get; private set; }

    internal double AcrossWave => _across.HeightMetres;

    /// <summary>Pressure of the air over the ambient's, as a share of it.</summary>
    internal double Squeeze() => _sealed ? _air / Math.Max(LeastAir, _capacity - Volume) - 1 : 0; // sending (8)

    /// <summary>Lays the surface across the tank with a slope.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Lie(double slope)
    {
        _level = LevelNow();
        Plane = PlaneOf(_level, slope);
    }

    internal double PlaneAt(double slope) => PlaneOf(LevelNow(), slope);

    /// <summary>Depth of fuel at a place, with the wave.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal double LevelAt(double ahead, double left, double across, double along)
    {
        if (left != _shape.Left || ahead != _shape.Ahead)
        {
            Shape(left, ahead);
        }

        var level = Plane - across * left - along * ahead + _shape.AcrossShape * _across.HeightMetres + _shape.AlongShape * _along.HeightMetres; // sending (3)
        return Math.Clamp(level, 0, Math.Max(_height, _level));
    }

    /// <summary>One step of both waves.</summary>
    internal void Slosh(double acrossChange, double alongChange, double retune)
    {
        if (Math.Abs(_level - _tuned) > retune)
        {
            _tuned = _level;
            _across.Tune(Math.Min(_level, _height), RoadSample.Gravity);
            _along.Tune(Math.Min(_level, _height), RoadSample.Gravity);
        }

        _across.Step(acrossChange);
        _along.Step(alongChange);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double LevelNow()
    {
        var x = Volume * _perVolume;
        if (x >= LevelTable.Layers)
        {
            return _height + (Volume - _capacity) / _neck;
        }

        var i = x > 0 ? (int)x : 0;
        var nodes = _nodes;
        return nodes[i] + (x - i) * (nodes[i + 1] - nodes[i]); // sending (1)
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double PlaneOf(double level, double slope)
    {
        var rise = 0.5 * _width * Math.Abs(slope);
        return level >= rise && level + rise <= _height ? level : Cornered(level, rise);
    }

    // sending (9): where the surface meets floor or roof the plane over the middle is not the mean depth any more; a box's section is taken.
    private double Cornered(double level, double rise)
    {
        if (level > _height || level <= 0 || rise == 0)
        {
            return level;
        }

        var (floor, roof) = (2 * Math.Sqrt(level * rise), 2 * Math.Sqrt((_height - level) * rise));
        var meetsFloor = level < rise && floor <= _height;
        if (meetsFloor)
        {
            return floor - rise;
        }

        return level + rise > _height && roof <= _height ? _height - roof + rise : 0.5 * _height + 2 * rise * (level / _height - 0.5);
    }

    private void Shape(double left, double ahead)
    {
        (_shape, _other) = (_other, _shape);
        if (left != _shape.Left || ahead != _shape.Ahead)
        {
            _shape = (left, ahead, Math.Sin(Math.PI * left / _width), Math.Sin(Math.PI * ahead / _length));
        }
    }
}
