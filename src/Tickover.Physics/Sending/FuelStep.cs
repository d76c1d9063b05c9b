namespace Tickover.Physics.Sending;

/// <summary>The estimator's step forward: the tanks' own equations over sixteen points that stand for the state's spread.</summary>
internal sealed class FuelStep
{
    private const int Size = FuelState.Size;
    private const int Points = 2 * Size;
    private const double LongestStep = 0.5;
    private const double BurnMemorySeconds = 600;

    private static readonly double Reach = Math.Sqrt(Size);

    private readonly TwoTanks _tanks;
    private readonly EstimatorSettings _settings;
    private readonly RestingNeedle _rest;
    private readonly double _apart;
    private readonly double[][] _points = [.. Enumerable.Range(0, Points).Select(_ => new double[Size])];
    private readonly double[,] _root = new double[Size, Size];
    private MarchPipe? _pipe;
    private double _pipeStep;

    internal FuelStep(TwoTanks tanks, EstimatorSettings settings)
    {
        (_tanks, _settings, _rest) = (tanks, settings, tanks.Gauge.Circuit.ToRest());
        _apart = tanks.Left.LeftMetres - tanks.Right.LeftMetres;
    }

    /// <summary>Moves a state on by a time on a road.</summary>
    internal void Forward(FuelState state, RoadSample road, double seconds)
    {
        Spread(state);
        var count = Math.Max(1, (int)Math.Ceiling(seconds / LongestStep));
        var step = seconds / count;
        if (_pipe is null || step != _pipeStep)
        {
            (_pipe, _pipeStep) = (new MarchPipe(_tanks.Pipe, _tanks.Fuel, step), step);
        }

        foreach (var point in _points)
        {
            for (var k = 0; k < count; k++)
            {
                Step(point, road, step, _pipe);
            }
        }

        var before = state.Mean[FuelState.Needle];
        Gather(state);
        Doubt(state, seconds, (state.Mean[FuelState.Needle] - before) / seconds);
    }

    // sending (27): points at the square root of the covariance.
    private void Spread(FuelState state)
    {
        Root(state.Covariance);
        for (var j = 0; j < Size; j++)
        {
            for (var i = 0; i < Size; i++)
            {
                _points[j][i] = state.Mean[i] + Reach * _root[i, j];
                _points[j + Size][i] = state.Mean[i] - Reach * _root[i, j];
            }
        }
    }

    private void Step(double[] x, in RoadSample read, double step, MarchPipe pipe)
    {
        var road = read with { LeftMetresPerSecondSquared = read.LeftMetresPerSecondSquared - x[FuelState.LeanOff] };
        var burn = Math.Clamp(x[FuelState.Burn], 0, _settings.MostBurn);
        var fromLeft = _tanks.Draw is { PickUp.Side: TankSide.Left };
        var across = road.LeftMetresPerSecondSquared / road.UpMetresPerSecondSquared;
        Move(x, 0.5 * step, burn, fromLeft);
        var (left, right) = (Level(_tanks.Left, x[FuelState.Left]), Level(_tanks.Right, x[FuelState.Right]));
        var drive = road.LeftMetresPerSecondSquared * _apart + road.AheadMetresPerSecondSquared * (_tanks.Left.AheadMetres - _tanks.Right.AheadMetres)
            + road.UpMetresPerSecondSquared * (_tanks.Left.FloorMetres - _tanks.Right.FloorMetres
                + MarchTank.PlaneOf(left, across, _tanks.Left) - MarchTank.PlaneOf(right, across, _tanks.Right));
        x[FuelState.Flow] = pipe.Step(x[FuelState.Flow], x[FuelState.Flow], drive, 1, 1);
        Move(x, 0.5 * step, burn, fromLeft);
        x[FuelState.Left] = Math.Clamp(x[FuelState.Left], 0, 1.02 * _tanks.Left.Table.CapacityCubicMetres);
        x[FuelState.Right] = Math.Clamp(x[FuelState.Right], 0, 1.02 * _tanks.Right.Table.CapacityCubicMetres);
        var target = _rest.NeedleAt(Ohms(x, road));
        var lag = (_tanks.Gauge.LagSeconds + _tanks.Gauge.AveragingSeconds) * Math.Exp(x[FuelState.LagOff]);
        x[FuelState.Needle] += (lag > 0 ? 1 - Math.Exp(-step / lag) : 1) * (target - x[FuelState.Needle]);
    }

    private double Ohms(double[] x, in RoadSample road)
    {
        var first = OhmsOf(_tanks.Sender, x, road);
        return _tanks.SecondSender is { } second ? 0.5 * (first + OhmsOf(second, x, road)) : first;
    }

    private double OhmsOf(TankSender sender, double[] x, in RoadSample road)
    {
        var isLeft = sender.Place.Side is TankSide.Left;
        var tank = isLeft ? _tanks.Left : _tanks.Right;
        var across = road.LeftMetresPerSecondSquared / road.UpMetresPerSecondSquared;
        var plane = MarchTank.PlaneOf(Level(tank, x[isLeft ? FuelState.Left : FuelState.Right]), across, tank);
        var level = plane - across * sender.Place.LeftMetres - road.AheadMetresPerSecondSquared / road.UpMetresPerSecondSquared * sender.Place.AheadMetres;
        return _tanks.Gauge.Circuit.Sender.OhmsAt(sender.Arm.TravelAt(Math.Clamp(level, 0, tank.Table.HeightMetres)));
    }

    private static double Level(LinkedTank tank, double volume) => tank.Table.LevelOf(Math.Max(0, volume));

    private static void Move(double[] x, double time, double burn, bool fromLeft)
    {
        var flow = x[FuelState.Flow] * Math.Exp(x[FuelState.FlowOff]);
        x[FuelState.Left] -= time * (flow + (fromLeft ? burn : 0));
        x[FuelState.Right] += time * (flow - (fromLeft ? 0 : burn));
    }

    private void Gather(FuelState state)
    {
        for (var i = 0; i < Size; i++)
        {
            state.Mean[i] = _points.Average(p => p[i]);
        }

        for (var i = 0; i < Size; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = 0.0;
                foreach (var p in _points)
                {
                    sum += (p[i] - state.Mean[i]) * (p[j] - state.Mean[j]);
                }

                state.Covariance[i, j] = state.Covariance[j, i] = sum / Points;
            }
        }
    }

    // sending (28): what the equations do not know.
    private void Doubt(FuelState state, double seconds, double needleSpeed)
    {
        var memory = seconds * _settings.ErrorMemorySeconds;
        var flow = _settings.FlowShare * state.Mean[FuelState.Flow];
        var (p, moved) = (state.Covariance, flow * flow * memory);
        p[FuelState.Left, FuelState.Left] += moved;
        p[FuelState.Right, FuelState.Right] += moved;
        p[FuelState.Left, FuelState.Right] -= moved;
        p[FuelState.Right, FuelState.Left] -= moved;
        p[FuelState.Flow, FuelState.Flow] += 1e-16 * seconds;
        var needle = _settings.LagShare * needleSpeed;
        p[FuelState.Needle, FuelState.Needle] += needle * needle * memory + 1e-8 * seconds;
        var burn = _settings.BurnShare * _settings.UsualBurn;
        p[FuelState.Burn, FuelState.Burn] += burn * burn * seconds / BurnMemorySeconds;
        state.Mean[FuelState.Burn] = Math.Clamp(state.Mean[FuelState.Burn], 0, _settings.MostBurn);
    }

    // Cholesky; a pivot that rounding took below nothing counts as nothing.
    private void Root(double[,] p)
    {
        for (var j = 0; j < Size; j++)
        {
            for (var i = j; i < Size; i++)
            {
                var sum = p[i, j];
                for (var k = 0; k < j; k++)
                {
                    sum -= _root[i, k] * _root[j, k];
                }

                _root[i, j] = i == j ? Math.Sqrt(Math.Max(0, sum)) : _root[j, j] > 0 ? sum / _root[j, j] : 0;
            }
        }
    }
}
