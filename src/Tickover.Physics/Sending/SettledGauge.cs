namespace Tickover.Physics.Sending;

/// <summary>What the gauge shows on level ground with both tanks at one level: the table of a fill in steps.</summary>
public sealed class SettledGauge
{
    private const int Cells = 400;
    private readonly double[] _volumes = new double[Cells + 1];
    private readonly double[] _needles = new double[Cells + 1];

    /// <summary>Makes the table.</summary>
    /// <param name="pair">The tanks with their sender and gauge.</param>
    public SettledGauge(TwoTanks pair)
    {
        ArgumentNullException.ThrowIfNull(pair);
        var fitting = pair.Fitting ?? throw new ArgumentException("A sender is needed.", nameof(pair));
        var low = Math.Min(pair.Left.FloorMetres, pair.Right.FloorMetres);
        var high = Math.Max(pair.Left.FloorMetres + pair.Left.Table.HeightMetres, pair.Right.FloorMetres + pair.Right.Table.HeightMetres);
        for (var i = 0; i <= Cells; i++)
        {
            var surface = low + (high - low) * i / Cells;
            var (left, right) = (surface - pair.Left.FloorMetres, surface - pair.Right.FloorMetres);
            _volumes[i] = Within(pair.Left.Table, left) + Within(pair.Right.Table, right);
            _needles[i] = fitting.Gauge.Shown(fitting.Gauge.Signal(SettledOhms(fitting, left, right)));
        }
    }

    /// <summary>Fuel in both tanks when full, m³.</summary>
    public double CapacityCubicMetres => _volumes[Cells];

    /// <summary>The needle for a volume.</summary>
    /// <param name="volume">In both tanks, m³.</param>
    /// <returns>0 at E, 1 at F.</returns>
    public double Needle(double volume) => Between(_volumes, _needles, volume, out _);

    /// <summary>The volume for a needle: what somebody with the table takes a reading for.</summary>
    /// <param name="needle">0 at E, 1 at F.</param>
    /// <returns>m³; at a stop the volume where the needle meets it.</returns>
    public double Volume(double needle)
    {
        var rising = _needles[Cells] >= _needles[0];
        for (var i = 1; i <= Cells; i++)
        {
            var (a, b) = (_needles[i - 1], _needles[i]);
            if (a != b && (rising ? needle <= b : needle >= b))
            {
                return _volumes[i - 1] + Math.Clamp((needle - a) / (b - a), 0, 1) * (_volumes[i] - _volumes[i - 1]);
            }
        }

        // At the upper stop: where it is first met.
        for (var i = Cells; i > 0; i--)
        {
            if (_needles[i] != _needles[i - 1])
            {
                return _volumes[i];
            }
        }

        return 0.5 * CapacityCubicMetres;            // a needle that never moves tells nothing
    }

    private static double Within(LevelTable table, double level) => table.Volume(Math.Clamp(level, 0, table.HeightMetres));

    private static double SettledOhms(SenderFitting fitting, double left, double right)
    {
        double Of(TankSender sender) => sender.Arm.Ohms(sender.Side == TankSide.Left ? left : right);
        return fitting.Second is { } second ? 0.5 * (Of(fitting.First) + Of(second)) : Of(fitting.First);
    }

    private static double Between(double[] xs, double[] ys, double x, out int cell)
    {
        var found = Array.BinarySearch(xs, x);
        cell = Math.Clamp(found >= 0 ? found : ~found - 1, 0, xs.Length - 2);
        var span = xs[cell + 1] - xs[cell];
        return span > 0 ? ys[cell] + Math.Clamp((x - xs[cell]) / span, 0, 1) * (ys[cell + 1] - ys[cell]) : ys[cell];
    }
}
