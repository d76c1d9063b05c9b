using System.Runtime.CompilerServices;

namespace Tickover.Physics.Sending;

/// <summary>The march of <see cref="TwoTanks"/>: half a step of the volumes, a step of the pipe, the other half; nothing is allocated on the way.</summary>
/// <remarks>Second order; the pipe's step is implicit in its friction and goes over to the full implicit one where friction is stiff.</remarks>
internal sealed class TwoTankMarch
{
    private const double RetuneMetres = 0.25e-3;           // 0.25 % of the frequency at a depth of 50 mm
    private const double LeastCover = 1e-3;

    private readonly MarchTank _left;
    private readonly MarchTank _right;
    private readonly MarchPipe _pipe;
    private readonly MarchGauge _gauge;
    private readonly double _step;
    private readonly double _apartAhead;
    private readonly double _apartLeft;
    private readonly double _apartUp;
    private readonly bool _drawsLeft;
    private readonly bool _returnsLeft;
    private readonly double _drawn;
    private readonly double _returned;
    private readonly MarchPlace _pickUp;
    private readonly MarchPlace _float;
    private readonly MarchPlace _second;
    private readonly double _pickUpHeight;
    private readonly double _gas;
    private readonly double _mouth;
    private readonly double _inward;
    private double _flow;
    private double _earlierFlow;
    private double _cover = 1;
    private double _across;
    private double _along;
    private double _steepest;

    internal TwoTankMarch(TwoTanks tanks, RoadSample road, (double Left, double Right) start, double step, double? needle)
    {
        _step = step;
        var (leftAir, rightAir) = Sealed(tanks.Vents);
        _gas = TwoTanks.AmbientPascals / tanks.Fuel.DensityKilogramsPerCubicMetre;
        _left = new MarchTank(tanks.Left, start.Left, step, leftAir);
        _right = new MarchTank(tanks.Right, start.Right, step, rightAir);
        _pipe = new MarchPipe(tanks.Pipe, tanks.Fuel, step);
        (_apartAhead, _apartLeft, _apartUp) =
            (tanks.Left.AheadMetres - tanks.Right.AheadMetres, tanks.Left.LeftMetres - tanks.Right.LeftMetres, tanks.Left.FloorMetres - tanks.Right.FloorMetres);
        (_mouth, _inward) = (tanks.Pipe.MouthMetres, tanks.Pipe.MouthInwardMetres);
        if (tanks.Draw is { } draw)
        {
            (_drawn, _returned) = (draw.BurntCubicMetresPerSecond + draw.ReturnCubicMetresPerSecond, draw.ReturnCubicMetresPerSecond);
            (_drawsLeft, _returnsLeft, _pickUpHeight) = (draw.PickUp.Side is TankSide.Left, draw.ReturnSide is TankSide.Left, draw.PickUp.HeightMetres);
        }

        _float = Place(tanks.Sender.Place);
        _second = Place(tanks.SecondSender?.Place ?? tanks.Sender.Place);
        _pickUp = Place(tanks.Draw?.PickUp ?? tanks.Sender.Place);
        (_across, _along) = Slopes(road);
        _left.Lie(_across);
        _right.Lie(_across);
        _gauge = new MarchGauge(tanks, step);
        _gauge.Start(_float.LevelAt(_across, _along), _second.LevelAt(_across, _along), needle);
        _cover = Cover();
    }

    internal double LeftVolume => _left.Volume;

    internal double RightVolume => _right.Volume;

    internal double Flow => _flow;

    internal double Needle => _gauge.Needle;

    internal double DrySeconds { get; private set; }

    /// <summary>Steepest slope of the surface at rest so far, at the samples.</summary>
    internal double Steepest => _steepest;

    /// <summary>From one sample of the road to the next.</summary>
    internal void Over(in RoadSample from, in RoadSample to, int steps)
    {
        if (steps == 1)
        {
            Step(Between(from, to, 0.5), Slopes(to));
        }
        else
        {
            var share = 1.0 / steps;
            for (var i = 0; i < steps; i++)
            {
                Step(Between(from, to, (i + 0.5) * share), Slopes(Between(from, to, (i + 1) * share)));
            }
        }

        _steepest = Math.Max(_steepest, Math.Max(Math.Abs(_across), Math.Abs(_along)));
    }

    internal SendingMoment Moment(double seconds, RoadSample road)
    {
        var level = _float.LevelAt(_across, _along);
        return new SendingMoment
        {
            Seconds = seconds,
            Road = road,
            LeftCubicMetres = _left.Volume,
            RightCubicMetres = _right.Volume,
            LeftLevelMetres = _left.Plane,
            RightLevelMetres = _right.Plane,
            FlowToRight = _flow,
            LeftWaveMetres = _left.AcrossWave,
            RightWaveMetres = _right.AcrossWave,
            SenderLevelMetres = level,
            Travel = _gauge.TravelAt(level),
            Ohms = _gauge.OhmsAt(level, _second.LevelAt(_across, _along)),
            Needle = _gauge.Needle,
            Lamp = _gauge.LampLit(level),
            PickUpCovered = _drawn == 0 || _cover >= 1,
        };
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (double Across, double Along) Slopes(in RoadSample road)
    {
        var over = 1 / road.UpMetresPerSecondSquared;
        return (road.LeftMetresPerSecondSquared * over, road.AheadMetresPerSecondSquared * over); // sending (3)
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static RoadSample Between(in RoadSample a, in RoadSample b, double share) => new(
        a.AheadMetresPerSecondSquared + share * (b.AheadMetresPerSecondSquared - a.AheadMetresPerSecondSquared),
        a.LeftMetresPerSecondSquared + share * (b.LeftMetresPerSecondSquared - a.LeftMetresPerSecondSquared),
        a.UpMetresPerSecondSquared + share * (b.UpMetresPerSecondSquared - a.UpMetresPerSecondSquared));

    private static (bool Left, bool Right) Sealed(TankVents vents) => (
        vents is TankVents.LeftBlocked or TankVents.BothBlocked, vents is TankVents.RightBlocked or TankVents.BothBlocked);

    private MarchPlace Place(TankPlace place) => new(place.Side is TankSide.Left ? _left : _right, place);

    private void Step(in RoadSample middle, (double Across, double Along) end)
    {
        var half = 0.5 * _step;
        Move(half);
        var (across, along) = Slopes(middle);
        _left.Lie(across);
        _right.Lie(across);
        var drive = middle.AheadMetresPerSecondSquared * _apartAhead + middle.LeftMetresPerSecondSquared * _apartLeft
            + middle.UpMetresPerSecondSquared * (_apartUp + _left.Plane - _right.Plane) + _gas * (_left.Squeeze() - _right.Squeeze()); // sending (8)
        var guess = 1.5 * _flow - 0.5 * _earlierFlow;
        _earlierFlow = _flow;
        _flow = _pipe.Step(_flow, guess, drive, MouthCover(_left, -_inward, across), MouthCover(_right, _inward, across));
        Move(half);
        var (acrossChange, alongChange) = (end.Across - _across, end.Along - _along);
        (_across, _along) = end;
        _left.Slosh(acrossChange, alongChange, RetuneMetres);
        _right.Slosh(acrossChange, alongChange, RetuneMetres);
        _left.Lie(_across);
        _right.Lie(_across);
        _gauge.Step(_float.LevelAt(_across, _along), _gauge.Second ? _second.LevelAt(_across, _along) : 0);
        if (_drawn > 0)
        {
            _cover = Cover();
            DrySeconds += _cover < 1 ? _step : 0;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Move(double time)
    {
        var (drawn, returned) = (_cover * _drawn, _cover * _returned);
        _left.Volume += time * ((_returnsLeft ? returned : 0) - (_drawsLeft ? drawn : 0) - _flow); // sending (9)
        _right.Volume += time * ((_returnsLeft ? 0 : returned) - (_drawsLeft ? 0 : drawn) + _flow);
    }

    // How much of the pipe's mouth is under fuel.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double MouthCover(MarchTank tank, double left, double across)
    {
        var depth = tank.Plane - across * left - _mouth;
        return depth >= _pipe.Bore ? 1 : Math.Max(LeastCover, depth / _pipe.Bore);
    }

    private double Cover()
    {
        var over = (_pickUp.LevelAt(_across, _along) - _pickUpHeight) * (1 / FuelDraw.CoverMetres);
        return over >= 1 ? 1 : Math.Max(0, over);
    }
}
