using MathNet.Numerics.LinearAlgebra;

namespace Tickover.Physics.Supply;

/// <summary>Looks for the flows at which every end has the pressure its flow needs, or takes all it wants.</summary>
/// <remarks>
/// At each end the pressure left falls with every flow, so with all others held there is one answer, found in a bracket. Newton's rule takes
/// all ends at once and is held to what brings them nearer; where it does not, a round of bracketed searches does.
/// </remarks>
internal sealed class SupplySearch
{
    /// <summary>Pressure to which they must meet, Pa: a seventh of a hundredth of a millimetre of petrol.</summary>
    public const double TolerancePascals = 0.01;

    private const int MaximumSteps = 80;
    private const int Halvings = 8;
    private readonly SupplyNetwork _network;
    private readonly double[] _flows;
    private readonly double[] _most;
    private readonly double[] _residuals;
    private readonly double[] _scales;

    public SupplySearch(SupplyNetwork network)
    {
        _network = network;
        var count = network.Leaves.Count;
        (_flows, _most, _residuals, _scales) = (new double[count], new double[count], new double[count], new double[count]);
        for (var leaf = 0; leaf < count; leaf++)
        {
            _most[leaf] = double.IsFinite(network.Demands[leaf]) ? network.Demands[leaf] : MostThrough(leaf);
        }

        for (var leaf = 0; leaf < count; leaf++)
        {
            _flows[leaf] = double.IsFinite(network.Demands[leaf]) ? _most[leaf] : _most[leaf] / 2;
        }
    }

    public ReadOnlySpan<double> Flows => _flows;

    public double Worst { get; private set; }

    public (SupplyEnding Ending, int Steps) Run()
    {
        for (var step = 0; step < MaximumSteps; step++)
        {
            Evaluate(_flows);
            Worst = WorstResidual();
            if (!double.IsFinite(Worst))
            {
                return (SupplyEnding.NotFinite, step);
            }

            if (Worst <= TolerancePascals)
            {
                return (SupplyEnding.Converged, step);
            }

            if (!TryNewton())
            {
                Sweep();
            }
        }

        return (SupplyEnding.MaximumIterations, MaximumSteps);
    }

    private void Evaluate(ReadOnlySpan<double> flows)
    {
        _network.Evaluate(flows);
        for (var leaf = 0; leaf < _residuals.Length; leaf++)
        {
            _residuals[leaf] = _network.Residual(leaf);
        }
    }

    private bool IsHeld(int leaf) =>
        (_flows[leaf] <= 0 && _residuals[leaf] <= 0) || (_flows[leaf] >= _most[leaf] && _residuals[leaf] >= 0);

    private double WorstResidual()
    {
        var worst = 0.0;
        for (var leaf = 0; leaf < _residuals.Length; leaf++)
        {
            worst = double.IsNaN(_residuals[leaf]) ? double.NaN : IsHeld(leaf) ? worst : Math.Max(worst, Math.Abs(_residuals[leaf]));
        }

        return worst;
    }

    private bool TryNewton()
    {
        var free = Enumerable.Range(0, _flows.Length).Where(leaf => !IsHeld(leaf)).ToArray();
        var slopes = Matrix<double>.Build.Dense(free.Length, free.Length, (row, column) => _network.Slope(free[row], free[column]));
        for (var leaf = 0; leaf < _flows.Length; leaf++)
        {
            _scales[leaf] = -1 / Math.Min(_network.Slope(leaf, leaf), -double.Epsilon);
        }

        var step = slopes.Solve(Vector<double>.Build.Dense(free.Length, i => -_residuals[free[i]])); // supply (16)
        if (step.Any(value => !double.IsFinite(value)))
        {
            return false;
        }

        var before = Merit(_flows);
        var trial = new double[_flows.Length];
        for (var (share, halving) = (1.0, 0); halving < Halvings; share /= 2, halving++)
        {
            _flows.CopyTo(trial, 0);
            for (var i = 0; i < free.Length; i++)
            {
                trial[free[i]] = Math.Clamp(_flows[free[i]] + share * step[i], 0, _most[free[i]]);
            }

            Evaluate(trial);
            if (Merit(trial) < before * (1 - 0.1 * share))
            {
                trial.CopyTo(_flows, 0);
                return true;
            }
        }

        return false;
    }

    // How far each end is from its answer in units of flow, by its own slope; zero for those held at nothing or at all they want.
    private double Merit(double[] flows)
    {
        var sum = 0.0;
        for (var leaf = 0; leaf < flows.Length; leaf++)
        {
            sum += Math.Abs(flows[leaf] - Math.Clamp(flows[leaf] + _residuals[leaf] * _scales[leaf], 0, _most[leaf]));
        }

        return sum;
    }

    private void Sweep()
    {
        for (var leaf = 0; leaf < _flows.Length; leaf++)
        {
            if (ResidualAt(leaf, _most[leaf]) >= 0 || ResidualAt(leaf, 0) <= 0)
            {
                _flows[leaf] = ResidualAt(leaf, 0) <= 0 ? 0 : _most[leaf];
                continue;
            }

            Bracketed(leaf);
        }
    }

    private void Bracketed(int leaf)
    {
        const int steps = 60;
        var (low, high) = (0.0, _most[leaf]);
        for (var i = 0; i < steps; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = ResidualAt(leaf, middle) > 0 ? (middle, high) : (low, middle);
        }

        _flows[leaf] = (low + high) / 2;
    }

    private double ResidualAt(int leaf, double flow)
    {
        _flows[leaf] = flow;
        Evaluate(_flows);
        return _residuals[leaf];
    }

    // The most an end can pass, all others shut: others only take pressure away.
    private double MostThrough(int leaf)
    {
        const double first = 1e-3; // kg/s, 5 l/h
        const int doublings = 40;
        var most = first;
        for (var i = 0; i < doublings && ResidualAt(leaf, most) > 0; i++)
        {
            most *= 2;
        }

        _flows[leaf] = 0;
        return most;
    }
}
