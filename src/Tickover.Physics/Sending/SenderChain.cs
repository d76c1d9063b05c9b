using System.Runtime.Intrinsics;

namespace Tickover.Physics.Sending;

/// <summary>From the levels at the senders to needle and lamp, step by step.</summary>
internal sealed class SenderChain
{
    private const int Cells = 512;
    private readonly SenderFitting _fitting;
    private readonly PlacePair _places;
    private readonly double[] _first;
    private readonly double[]? _second;
    private readonly double _firstHeight;
    private readonly double _secondHeight;
    private readonly bool _firstLeft;
    private readonly double _keep;                   // of the needle's lag over a step
    private readonly double _lampKeep;
    private double _target;
    private double _signal;
    private double _lampLevel;

    internal SenderChain(TwoTanks pair, SenderFitting fitting, double dt)
    {
        _fitting = fitting;
        _firstLeft = fitting.First.Side == TankSide.Left;
        var second = fitting.Second?.Place ?? default;
        _places = _firstLeft ? new PlacePair(pair, fitting.First.Place, second) : new PlacePair(pair, second, fitting.First.Place);
        var (own, other) = _firstLeft ? (pair.Left, pair.Right) : (pair.Right, pair.Left);
        (_firstHeight, _secondHeight) = (own.Table.HeightMetres, other.Table.HeightMetres);
        _first = Ohms(fitting.First.Arm, _firstHeight);
        _second = fitting.Second is { } s ? Ohms(s.Arm, _secondHeight) : null;
        _keep = Math.Exp(-dt / fitting.Gauge.TimeConstantSeconds);
        _lampKeep = fitting.Lamp is { DelaySeconds: > 0 } lamp ? Math.Exp(-dt / lamp.DelaySeconds) : 0;
    }

    internal double Level { get; private set; }

    internal double SeenOhms { get; private set; }

    internal double Travel => _fitting.First.Arm.Travel(Level);

    internal double Needle => _fitting.Gauge.Shown(_signal);

    internal bool Lamp => _fitting.Lamp is { } lamp && _lampLevel < lamp.LevelMetres;

    internal void Settle(SloshLanes slosh, double left, double right)
    {
        Look(slosh, left, right);
        (_signal, _lampLevel) = (_target, Level);
    }

    internal void Step(SloshLanes slosh, double left, double right)
    {
        var before = _target;
        Look(slosh, left, right);
        _signal = _keep * _signal + (1 - _keep) * 0.5 * (before + _target); // sending (19)
        _lampLevel = _lampKeep * _lampLevel + (1 - _lampKeep) * Level;
    }

    private void Look(SloshLanes slosh, double left, double right)
    {
        var rises = slosh.Rises(_places);
        var (l, r) = (left + rises.GetElement(0), right + rises.GetElement(1));
        Level = Math.Clamp(_firstLeft ? l : r, 0, _firstHeight);
        var ohms = At(_first, Level / _firstHeight);
        if (_second is { } second)
        {
            ohms = 0.5 * (ohms + At(second, Math.Clamp((_firstLeft ? r : l) / _secondHeight, 0, 1)));
        }

        SeenOhms = ohms;
        _target = _fitting.Gauge.Signal(ohms);
    }

    private static double At(double[] table, double part)
    {
        var place = part * Cells;
        var cell = Math.Min((int)place, Cells - 1);
        return table[cell] + (place - cell) * (table[cell + 1] - table[cell]);
    }

    private static double[] Ohms(FloatArm arm, double height) => [.. Enumerable.Range(0, Cells + 1).Select(i => arm.Ohms(height * i / Cells))];
}
