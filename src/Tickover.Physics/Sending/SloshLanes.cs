using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Tickover.Physics.Sending;

/// <summary>The four first sloshes of two tanks side by side in one vector.</summary>
internal sealed class SloshLanes
{
    private readonly double[] _lengths;
    private readonly double[] _dampings;
    private readonly double _gravity;
    private readonly double _dt;
    private readonly double[] _work = new double[20];
    private Vector256<double> _slope;
    private Vector256<double> _rate;
    private Vector256<double> _settled;
    private Vector256<double> _keep, _pass, _pull, _hold, _late;
    private double _leftDepth = -1, _rightDepth = -1;

    internal SloshLanes(TwoTanks pair, double dt)
    {
        (_gravity, _dt) = (pair.Gravity, dt);
        _lengths = [pair.Left.WidthMetres, pair.Right.WidthMetres, pair.Left.LengthMetres, pair.Right.LengthMetres];
        _dampings = [pair.Left.SloshDamping, pair.Right.SloshDamping, pair.Left.SloshDamping, pair.Right.SloshDamping];
    }

    /// <summary>Slopes of the surfaces sideways, left and right tank.</summary>
    internal Vector128<double> SideSlopes => _slope.GetLower();

    internal void Settle(double ax, double ay)
    {
        _settled = Settled(ax, ay);
        (_slope, _rate) = (_settled, Vector256<double>.Zero);
    }

    /// <summary>Takes the frequencies of new depths; the answer over a step is exact for them.</summary>
    internal void Retune(double leftDepth, double rightDepth)
    {
        const double least = 0.002;                  // m; a film does not slosh
        const double worthwhile = 1e-5;              // m
        if (Math.Abs(leftDepth - _leftDepth) < worthwhile && Math.Abs(rightDepth - _rightDepth) < worthwhile)
        {
            return;
        }

        (_leftDepth, _rightDepth) = (leftDepth, rightDepth);
        for (var lane = 0; lane < 4; lane++)
        {
            Tune(lane, SloshMode.Frequency(_lengths[lane], Math.Max(least, lane % 2 == 0 ? leftDepth : rightDepth), _gravity));
        }

        _keep = Lanes(0);
        _pass = Lanes(4);
        _pull = Lanes(8);
        _hold = Lanes(12);
        _late = Lanes(16);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Step(double ax, double ay)
    {
        // About a target that moves evenly the swing lags by 2ζ/ω of its speed; what is left of it dies out freely: sending (11)
        var target = Settled(ax, ay);
        var speed = (target - _settled) * (1 / _dt);
        var offset = _slope - _settled + _late * speed;
        var rate = _rate - speed;
        _slope = _keep * offset + _pass * rate + target - _late * speed;
        _rate = _pull * offset + _hold * rate + speed;
        _settled = target;
    }

    /// <summary>How far the surface stands above the tank's mean level at a place in each tank, m.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Vector128<double> Rises(in PlacePair places)
    {
        var all = _settled * places.Rest + _slope * places.Modal;
        return all.GetLower() + all.GetUpper();
    }

    private void Tune(int lane, double omega)
    {
        var zeta = _dampings[lane];
        var decay = zeta * omega;
        var swing = omega * Math.Sqrt(1 - zeta * zeta);
        var (sine, cosine) = Math.SinCos(swing * _dt);
        var fade = Math.Exp(-decay * _dt);
        _work[lane] = fade * (cosine + decay / swing * sine);
        _work[4 + lane] = fade * sine / swing;
        _work[8 + lane] = -fade * omega * omega / swing * sine;
        _work[12 + lane] = fade * (cosine - decay / swing * sine);
        _work[16 + lane] = 2 * zeta / omega;
    }

    private Vector256<double> Lanes(int from) => Vector256.Create(_work[from], _work[from + 1], _work[from + 2], _work[from + 3]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> Settled(double ax, double ay) => Vector256.Create(Vector128.Create(-ay / _gravity), Vector128.Create(-ax / _gravity));
}
