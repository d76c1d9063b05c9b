namespace Tickover.Physics.Sending;

/// <summary>The tanks as the estimator sees them: no slosh, the pipe's flow taken half implicitly so that tenths of a second will do.</summary>
internal sealed class EstimatorModel
{
    internal const int LeftVolume = 0, RightVolume = 1, PipeFlow = 2, Needle = 3, Burnt = 4;

    private readonly TwoTanks _pair;
    private readonly SenderFitting _fitting;
    private readonly PipeFriction _friction;
    private readonly FuelEstimateSettings _settings;

    internal EstimatorModel(TwoTanks pair, FuelEstimateSettings settings)
    {
        (_pair, _settings) = (pair, settings);
        _fitting = pair.Fitting ?? throw new ArgumentException("A sender is needed.", nameof(pair));
        _friction = new PipeFriction(pair.Pipe, pair.Viscosity);
    }

    /// <summary>Steps for differences, one for each of the state's members.</summary>
    internal double[] Scales { get; } = [1e-5, 1e-5, 1e-8, 1e-4, 1e-8];

    internal (double Left, double Right) Share(double total)
    {
        var (low, high) = (Math.Min(_pair.Left.FloorMetres, _pair.Right.FloorMetres), Math.Max(Roof(_pair.Left), Roof(_pair.Right)));
        for (var pass = 0; pass < 60; pass++)
        {
            var middle = 0.5 * (low + high);
            var held = Held(_pair.Left, middle) + Held(_pair.Right, middle);
            (low, high) = held < total ? (middle, high) : (low, middle);
        }

        return (Held(_pair.Left, low), Held(_pair.Right, low));
    }

    // sending (22)
    internal double[] Next(double[] x, double ax, double ay, double dt)
    {
        var g = _pair.Gravity;
        var (left, right) = (_pair.Left.Table.Level(x[LeftVolume]), _pair.Right.Table.Level(x[RightVolume]));
        var drive = g * (left - right + _pair.Left.FloorMetres - _pair.Right.FloorMetres)
            + ay * (_pair.Left.LeftMetres - _pair.Right.LeftMetres) + ax * (_pair.Left.AheadMetres - _pair.Right.AheadMetres);
        var area = _pair.Pipe.AreaSquareMetres;
        var speed = Math.Abs(x[PipeFlow]) / area;
        var k = x[PipeFlow] > 0 || (x[PipeFlow] == 0 && drive > 0) ? _pair.Pipe.LossToRight : _pair.Pipe.LossToLeft;
        var friction = _friction.Energy(Math.Max(speed, 1e-3), out _) / Math.Max(speed, 1e-3);
        var mobility = area / _pair.Pipe.InertiaLengthMetres;
        var square = 0.5 * k * speed / area;
        var pull = dt * mobility;
        var flow = (x[PipeFlow] * (1 + pull * square) + pull * drive) / (1 + pull * (friction / area + 2 * square)); // one step of Newton from the flow before
        var burnt = dt * x[Burnt];
        var fromLeft = _pair.Draw.PickUpSide == TankSide.Left;
        var target = Target(left, right, ax, ay);
        var keep = Math.Exp(-dt / _fitting.Gauge.TimeConstantSeconds);
        return
        [
            x[LeftVolume] - dt * flow - (fromLeft ? burnt : 0) + Circulated(dt, TankSide.Left),
            x[RightVolume] + dt * flow - (fromLeft ? 0 : burnt) + Circulated(dt, TankSide.Right),
            flow,
            keep * x[Needle] + (1 - keep) * target,
            x[Burnt],
        ];
    }

    internal void Bound(double[] x)
    {
        x[LeftVolume] = Math.Clamp(x[LeftVolume], 0, _pair.Left.Table.CapacityCubicMetres);
        x[RightVolume] = Math.Clamp(x[RightVolume], 0, _pair.Right.Table.CapacityCubicMetres);
        x[Burnt] = Math.Clamp(x[Burnt], 0, _settings.MostBurnt); // fuel only goes down
    }

    private double Circulated(double dt, TankSide side)
    {
        var round = dt * _pair.Draw.ReturnedCubicMetresPerSecond;
        return (_pair.Draw.ReturnSide == side ? round : 0) - (_pair.Draw.PickUpSide == side ? round : 0);
    }

    private double Target(double left, double right, double ax, double ay)
    {
        double Ohms(TankSender sender)
        {
            var tank = sender.Side == TankSide.Left ? _pair.Left : _pair.Right;
            var level = sender.Side == TankSide.Left ? left : right;
            level -= (ay * sender.Place.LeftMetres + ax * sender.Place.AheadMetres) / _pair.Gravity;
            return sender.Arm.Ohms(Math.Clamp(level, 0, tank.Table.HeightMetres));
        }

        var ohms = _fitting.Second is { } second ? 0.5 * (Ohms(_fitting.First) + Ohms(second)) : Ohms(_fitting.First);
        return _fitting.Gauge.Shown(_fitting.Gauge.Signal(ohms));
    }

    private static double Roof(LinkedTank tank) => tank.FloorMetres + tank.Table.HeightMetres;

    private static double Held(LinkedTank tank, double surface) => tank.Table.Volume(Math.Clamp(surface - tank.FloorMetres, 0, tank.Table.HeightMetres));
}
