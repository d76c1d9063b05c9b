using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Tickover.Physics.Sending;

/// <summary>Steps two tanks along a road; one of its own for each run.</summary>
/// <remarks>
/// Slosh by its exact answer over a step, the pipe by a trapezium solved for the flow at the end, the needle by its exact answer.
/// The step is fixed; nothing is allocated in it.
/// </remarks>
internal sealed class TankStepper
{
    private const double Drier = 0.05;               // least part of its bore that a dry port counts as open: the loss stays finite
    private const double PickUpEdge = 0.004;         // depth over which the pick-up goes from dry to drawing in full, m
    private const double SloshHolds = 0.25;          // time for which a slosh's frequency is kept, s

    private readonly TwoTanks _pair;
    private readonly TankLane _left;
    private readonly TankLane _right;
    private readonly SloshLanes _slosh;
    private readonly SenderChain? _chain;
    private readonly PipeFriction _friction;
    private readonly PlacePair _ports;
    private readonly PlacePair _pickUps;
    private readonly double _dt;
    private readonly double _implicit;               // weight of the step's end
    private readonly double _area;
    private readonly double _mobility;               // area over inertia length, m
    private readonly double _gravity;
    private readonly double _fixedHead;              // floors and ports, J/kg
    private readonly double _acrossPorts;            // m, left minus right
    private readonly double _alongPorts;
    private readonly double _bore;
    private readonly double _toRight;
    private readonly double _toLeft;
    private readonly double _pickUpHeight;
    private readonly TankSide _pickUpSide;
    private readonly double _drawn;
    private readonly double _returned;
    private readonly int _sloshSteps;
    private double _flow;
    private double _energy;                          // drive less loss at the start of the step, J/kg
    private double _cover = 1;                       // of the pick-up
    private double _lossFactor;
    private long _edged;

    internal TankStepper(TwoTanks pair, double dt, (double Left, double Right) volumes)
    {
        (_pair, _dt, _gravity) = (pair, dt, pair.Gravity);
        _left = new TankLane(pair.Left, pair, volumes.Left);
        _right = new TankLane(pair.Right, pair, volumes.Right);
        _slosh = new SloshLanes(pair, dt);
        _chain = pair.Fitting is { } fitting ? new SenderChain(pair, fitting, dt) : null;
        _friction = new PipeFriction(pair.Pipe, pair.Viscosity);
        _ports = new PlacePair(pair, pair.Left.Port, pair.Right.Port);
        var draw = pair.Draw;
        _pickUps = new PlacePair(pair, draw.PickUp, draw.PickUp);
        (_pickUpHeight, _pickUpSide, _returned) = (draw.PickUp.HeightMetres, draw.PickUpSide, draw.ReturnedCubicMetresPerSecond);
        _drawn = draw.BurntCubicMetresPerSecond + draw.ReturnedCubicMetresPerSecond;
        var pipe = pair.Pipe;
        (_area, _bore, _toRight, _toLeft) = (pipe.AreaSquareMetres, pipe.BoreMetres, pipe.LossToRight, pipe.LossToLeft);
        _mobility = _area / pipe.InertiaLengthMetres;
        _implicit = 0.5 + 5 * dt;                    // tends to a half with the step: second order, and stiff losses die out
        _fixedHead = _gravity * (pair.Left.FloorMetres - pair.Right.FloorMetres);
        _acrossPorts = pair.Left.LeftMetres + pair.Left.Port.LeftMetres - pair.Right.LeftMetres - pair.Right.Port.LeftMetres;
        _alongPorts = pair.Left.AheadMetres + pair.Left.Port.AheadMetres - pair.Right.AheadMetres - pair.Right.Port.AheadMetres;
        _sloshSteps = Math.Max(1, (int)Math.Round(SloshHolds / dt));
    }

    internal TankMoments Run(RoadTrace trace, int parts, double every, IReadOnlyList<FuelFill> fills)
    {
        var stride = Math.Max(1, (int)Math.Round(every / _dt));
        var steps = (trace.Count - 1) * parts;
        var book = new MomentBook(steps / stride + 1, stride * _dt);
        var ahead = trace.Ahead;
        var left = trace.Left;
        Start(ahead[0], left[0]);
        Write(book, ahead[0], left[0]);
        int step = 0, fill = 0, untilSlosh = 0, untilBook = stride;
        for (var sample = 0; sample < ahead.Length - 1; sample++)
        {
            var (ax, ay) = (ahead[sample], left[sample]);
            var (sx, sy) = ((ahead[sample + 1] - ax) / parts, (left[sample + 1] - ay) / parts);
            for (var part = 1; part <= parts; part++)
            {
                if (--untilSlosh < 0)
                {
                    _slosh.Retune(_left.Level, _right.Level);
                    untilSlosh = _sloshSteps - 1;
                    fill = Fill(fills, fill, step * _dt);
                }

                Step(ax + part * sx, ay + part * sy);
                step++;
                if (--untilBook == 0)
                {
                    Write(book, ax + part * sx, ay + part * sy);
                    untilBook = stride;
                }
            }
        }

        return book.Close(Validity.Of("part of the time with a dry corner or fuel at the roof, 1", (double)_edged / Math.Max(1, book.Written), (0, 0.05), (0, 0.5)));
    }

    private int Fill(IReadOnlyList<FuelFill> fills, int next, double now)
    {
        while (next < fills.Count && fills[next].Seconds <= now)
        {
            _left.Fill(fills[next].LeftCubicMetres);
            _right.Fill(fills[next].RightCubicMetres);
            next++;
        }

        return next;
    }

    private void Start(double ax, double ay)
    {
        _slosh.Settle(ax, ay);
        var rises = _slosh.Rises(_ports);
        _lossFactor = LossFactor(_left.Level + rises.GetElement(0), _right.Level + rises.GetElement(1));
        _energy = Drive(rises, ax, ay);
        Cover();
        _chain?.Settle(_slosh, _left.Level, _right.Level);
    }

    private void Step(double ax, double ay)
    {
        _slosh.Step(ax, ay);
        var rises = _slosh.Rises(_ports);
        var outward = _dt * _drawn * _cover;
        var (fromLeft, fromRight) = _pickUpSide == TankSide.Left ? (outward, 0.0) : (0.0, outward);
        var back = _dt * _returned * _cover;
        fromLeft -= _pair.Draw.ReturnSide == TankSide.Left ? back : 0;
        fromRight -= _pair.Draw.ReturnSide == TankSide.Right ? back : 0;

        // The drive at the end of the step as it would be with the flow at its start, and how the flow at the end changes it.
        var half = 0.5 * _dt;
        var (dl, dr) = (-half * _flow - fromLeft, half * _flow - fromRight);
        var leftRate = _gravity * _left.Slope + _left.Stiffness;
        var rightRate = _gravity * _right.Slope + _right.Stiffness;
        var drive = Drive(rises, ax, ay) + leftRate * dl - rightRate * dr;
        var before = _flow;
        _flow = Solve(drive, half * (leftRate + rightRate));

        _left.Volume += half * -(before + _flow) - fromLeft;
        _right.Volume += half * (before + _flow) - fromRight;
        _left.Refresh();
        _right.Refresh();
        _lossFactor = LossFactor(_left.Level + rises.GetElement(0), _right.Level + rises.GetElement(1));
        _energy = Drive(rises, ax, ay) - Loss(_flow, out _);
        Cover();
        _chain?.Step(_slosh, _left.Level, _right.Level);
    }

    // sending (2), with the loss left out
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Drive(Vector128<double> rises, double ax, double ay) =>
        _gravity * (_left.Level - _right.Level + rises.GetElement(0) - rises.GetElement(1)) + _fixedHead
        + _left.Pressure - _right.Pressure + ay * _acrossPorts + ax * _alongPorts;

    // Newton on the trapezium; the loss is convex on each side of rest, so three passes reach the last digits.
    private double Solve(double drive, double give)
    {
        var start = _flow + _dt * _mobility * (1 - _implicit) * _energy;
        var weight = _dt * _mobility * _implicit;
        var flow = _flow;
        for (var pass = 0; pass < 3; pass++)
        {
            var loss = Loss(flow, out var slope);
            var miss = flow - start - weight * (drive - give * flow - loss);
            var change = miss / (1 + weight * (give + slope));
            flow -= change;
            if (Math.Abs(change) < 1e-12)
            {
                break;
            }
        }

        return flow;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Loss(double flow, out double slope)
    {
        var speed = flow / _area;
        var size = Math.Abs(speed);
        var k = (speed >= 0 ? _toRight : _toLeft) + _lossFactor;
        var energy = _friction.Energy(size, out var bend) + 0.5 * k * size * size; // sending (4)
        slope = (bend + k * size) / _area;
        return speed >= 0 ? energy : -energy;
    }

    // A port that comes out of the fuel lets less and less through: sending (13)
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double LossFactor(double left, double right)
    {
        var source = _flow >= 0 ? left - _pair.Left.Port.HeightMetres : right - _pair.Right.Port.HeightMetres;
        if (source >= _bore)
        {
            return 0;
        }

        var open = Math.Max(Drier, source / _bore);
        return 1 / (open * open) - 1;
    }

    private void Cover()
    {
        var rises = _slosh.Rises(_pickUps);
        var depth = _pickUpSide == TankSide.Left ? _left.Level + rises.GetElement(0) : _right.Level + rises.GetElement(1);
        _cover = Math.Clamp((depth - _pickUpHeight) / PickUpEdge, 0, 1);
    }

    private void Write(MomentBook book, double ax, double ay)
    {
        var slopes = _slosh.SideSlopes;
        var (l, r) = (slopes.GetElement(0), slopes.GetElement(1));
        _edged += Edged(_pair.Left, _left.Level, l) || Edged(_pair.Right, _right.Level, r) ? 1 : 0;
        book.Fuel(_left, _right, (l, r), _flow, _cover > 0.5);
        book.Road(ax, ay);
        book.Sender(_chain);
    }

    private static bool Edged(LinkedTank tank, double level, double slope)
    {
        var swing = 0.5 * tank.WidthMetres * Math.Abs(slope);
        return swing > level || level + swing > tank.Table.HeightMetres;
    }
}
