namespace Tickover.Physics.Sending;

/// <summary>Litres against the needle at rest on the level: what a driver has learned to read. docs/physics/sending.md (26).</summary>
public sealed class NeedleScale
{
    private const int Steps = 200;

    private readonly double[] _needle = new double[Steps + 1];
    private readonly double _capacity;
    private readonly bool _falls;

    /// <summary>The scale of a pair of tanks.</summary>
    /// <param name="tanks">The tanks.</param>
    public NeedleScale(TwoTanks tanks)
    {
        _capacity = tanks.Left.Table.CapacityCubicMetres + tanks.Right.Table.CapacityCubicMetres;
        for (var k = 0; k <= Steps; k++)
        {
            _needle[k] = tanks.NeedleAtRest(_capacity * k / Steps);
        }

        _falls = _needle[^1] < _needle[0];
    }

    /// <summary>Both tanks full, m³.</summary>
    public double CapacityCubicMetres => _capacity;

    /// <summary>Whether the needle moves at all between empty and full.</summary>
    public bool Moves => Math.Abs(_needle[^1] - _needle[0]) > 0.02;

    /// <summary>Litres of a needle at rest; where several amounts share a needle, the middle of them.</summary>
    /// <param name="needle">0 at E, 1 at F.</param>
    /// <returns>m³.</returns>
    public double CubicMetresAt(double needle)
    {
        var (low, high) = (Below(needle, strictly: true), Below(needle, strictly: false));
        return 0.5 * (low + high);
    }

    // The amount up to which the needle stands below a figure.
    private double Below(double needle, bool strictly)
    {
        const double same = 1e-9;
        var sign = _falls ? -1 : 1;
        var wanted = sign * needle + (strictly ? -same : same);
        for (var k = 0; k <= Steps; k++)
        {
            var here = sign * _needle[k];
            if (here < wanted)
            {
                continue;
            }

            var before = k == 0 ? here : sign * _needle[k - 1];
            var share = k == 0 || here <= before ? 0 : (here - wanted) / (here - before);
            return _capacity * (k - share) / Steps; // sending (26)
        }

        return _capacity;
    }
}
