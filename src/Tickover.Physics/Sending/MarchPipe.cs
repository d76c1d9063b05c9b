using System.Runtime.CompilerServices;

namespace Tickover.Physics.Sending;

/// <summary>A cross-pipe on the march: one step of its column of fuel.</summary>
internal sealed class MarchPipe
{
    private const double TabledReynolds = 1e5;
    private const int Cells = 4096;                        // within 5e-5 of the factor everywhere

    private readonly double _gain;
    private readonly double _head;
    private readonly double _slender;
    private readonly double _reynoldsPerFlow;
    private readonly double _laminar;
    private readonly double _roughness;
    private readonly double _given;
    private readonly double[] _turbulent;
    private readonly double _cellsPerReynolds;
    private readonly double _toRight;
    private readonly double _toLeft;

    internal MarchPipe(CrossPipe pipe, CarriedFuel fuel, double step)
    {
        var area = pipe.AreaSquareMetres;
        var kinematic = fuel.ViscosityPascalSeconds / fuel.DensityKilogramsPerCubicMetre;
        Bore = pipe.BoreMetres;
        _gain = step * area / pipe.ColumnMetres;
        _head = 1 / (2 * area * area);
        _slender = pipe.LengthMetres / pipe.BoreMetres;
        _reynoldsPerFlow = pipe.BoreMetres / (area * kinematic);
        _laminar = 64 / _reynoldsPerFlow * _slender * _head;   // Poiseuille, for one m³/s
        _roughness = pipe.RoughnessTerm;
        _given = pipe.FrictionFactor ?? -1;
        _cellsPerReynolds = Cells / (TabledReynolds - CrossPipe.LaminarReynolds);
        _turbulent = [.. Enumerable.Range(0, Cells + 1).Select(k => Factor(CrossPipe.LaminarReynolds + k / _cellsPerReynolds))];
        (_toRight, _toLeft) = (pipe.LossToRight, pipe.LossToLeft);
    }

    internal double Bore { get; }

    /// <summary>Flow after the step.</summary>
    /// <param name="flow">Before it.</param>
    /// <param name="guess">In the middle of it, for the friction factor and the stiffness.</param>
    /// <param name="drive">What drives it to the right, J/kg.</param>
    /// <param name="leftCover">Share of the left mouth under fuel.</param>
    /// <param name="rightCover">The same of the right mouth.</param>
    internal double Step(double flow, double guess, double drive, double leftCover, double rightCover)
    {
        var (linear, turbulent) = Friction(Math.Abs(guess));
        var right = guess > 0 || (guess == 0 && drive > 0);
        var loss = right ? _toRight : _toLeft;
        var cover = right ? leftCover : rightCover;
        loss = cover < 1 ? loss / (cover * cover) : loss;                         // sending (7)
        var square = _head * (turbulent + loss);
        var stiffness = _gain * (linear + 2 * square * Math.Abs(guess));
        var theta = (6 + 2 * stiffness) / (12 + 2 * stiffness);                   // sending (25)
        var gain = theta * _gain;
        var pushed = flow + gain * drive;
        var size = Math.Abs(pushed);
        var slow = 1 + gain * linear;
        // Root of gain·square·q² + slow·q = size, in the form that stays good where the square fades.
        var q = 2 * size / (slow + Math.Sqrt(slow * slow + 4 * gain * square * size));
        var middle = pushed < 0 ? -q : q;
        return flow + (middle - flow) * ((12 + 2 * stiffness) / (6 + 2 * stiffness));
    }

    // Friction as a part that goes with the flow and a part that goes with its square.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private (double Linear, double Square) Friction(double flow)
    {
        if (_given >= 0)
        {
            return (0, _given * _slender);
        }

        var reynolds = flow * _reynoldsPerFlow;
        if (reynolds <= CrossPipe.LaminarReynolds)
        {
            return (_laminar, 0);
        }

        var x = (reynolds - CrossPipe.LaminarReynolds) * _cellsPerReynolds;
        if (x >= Cells)
        {
            return (0, Factor(reynolds));
        }

        var (table, i) = (_turbulent, unchecked((int)x));
        return (0, table[i] + (x - i) * (table[i + 1] - table[i]));
    }

    // Length over bore times Darcy's factor above the laminar range.
    private double Factor(double reynolds) =>
        _slender * CrossPipe.Blend(reynolds, 64 / reynolds, CrossPipe.Haaland(reynolds, _roughness));
}
