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
    private readonly bool _sealed;
    private readonly double _air;
    private SloshMode _across;
    private SloshMode _along;
    private double _tuned = UntunedDepth;
    private double _level;

    internal MarchTank(LinkedTank tank, double volume, double step, bool isSealed)
    {
        (_nodes, _capacity, _height, _neck) = (tank.Table.Nodes, tank.Table.CapacityCubicMetres, tank.Table.HeightMetres, tank.Table.NeckSquareMetres);
        _perVolume = LevelTable.Layers / _capacity;
        (Width, Length) = (tank.WidthMetres, tank.LengthMetres);
        (_sealed, _air, Volume) = (isSealed, Math.Max(LeastAir, _capacity - volume), volume);
        _across = new SloshMode(Width, tank.Damping, step);
        _along = new SloshMode(Length, tank.Damping, step);
    }

    internal double Volume { get; set; }

    /// <summary>Surface over the middle of the floor as it lies now.</summary>
    internal double Plane { get; private set; }

    internal double AcrossWave => _across.HeightMetres;

    internal double AlongWave => _along.HeightMetres;

    internal double Width { get; }

    internal double Length { get; }

    /// <summary>Where no fuel can stand higher: the roof, or the neck when that is full.</summary>
    internal double Ceiling => Math.Max(_height, _level);

    /// <summary>Pressure of the air over the ambient's, as a share of it.</summary>
    internal double Squeeze() => _sealed ? _air / Math.Max(LeastAir, _capacity - Volume) - 1 : 0; // sending (8)

    /// <summary>Lays the surface across the tank with a slope.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Lie(double slope)
    {
        _level = LevelNow();
        Plane = PlaneOf(_level, slope);
    }

    /// <summary>Surface over the middle of a tank's floor for a mean depth and a slope across it.</summary>
    internal static double PlaneOf(double level, double slope, LinkedTank tank)
    {
        var (rise, height) = (0.5 * tank.WidthMetres * Math.Abs(slope), tank.Table.HeightMetres);
        return level >= rise && level + rise <= height ? level : Cornered(level, rise, height);
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

        var i = x > 0 ? unchecked((int)x) : 0;
        var nodes = _nodes;
        return nodes[i] + (x - i) * (nodes[i + 1] - nodes[i]); // sending (1)
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double PlaneOf(double level, double slope)
    {
        var rise = 0.5 * Width * Math.Abs(slope);
        return level >= rise && level + rise <= _height ? level : Cornered(level, rise, _height);
    }

    // sending (4): where the surface meets floor or roof the plane over the middle is not the mean depth any more; a box's section is taken.
    private static double Cornered(double level, double rise, double height)
    {
        if (level > height || level <= 0 || rise == 0)
        {
            return level;
        }

        var (floor, roof) = (2 * Math.Sqrt(level * rise), 2 * Math.Sqrt((height - level) * rise));
        if (level < rise && floor <= height)
        {
            return floor - rise;
        }

        return level + rise > height && roof <= height ? height - roof + rise : 0.5 * height + 2 * rise * (level / height - 0.5);
    }
}
