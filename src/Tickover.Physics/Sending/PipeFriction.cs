namespace Tickover.Physics.Sending;

/// <summary>Energy that the wall of the cross-pipe takes, J/kg, tabled over the speed so that the stepping takes no logarithm.</summary>
/// <remarks>Straight lines between the steps, so that value and slope belong together. Thread-safe.</remarks>
public sealed class PipeFriction
{
    /// <summary>Speed at which the table ends, m/s; above it the friction factor stays.</summary>
    public const double HighestSpeed = 8;

    /// <summary>Steps of the table.</summary>
    public const int Cells = 2048;

    private const double LaminarEnds = 2300, TurbulentBegins = 4000;
    private const double CellsPerSpeed = Cells / HighestSpeed;

    private readonly double[] _energies = new double[Cells + 1];
    private readonly CrossPipe _pipe;
    private readonly double _viscosity;

    /// <summary>Makes the table.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="kinematicViscosity">m²/s; zero: no friction unless the pipe has a fixed factor.</param>
    public PipeFriction(CrossPipe pipe, double kinematicViscosity)
    {
        ArgumentNullException.ThrowIfNull(pipe);
        _pipe = pipe.Checked();
        _viscosity = Precondition.NotNegative(kinematicViscosity);
        for (var i = 0; i <= Cells; i++)
        {
            _energies[i] = Exact(i / CellsPerSpeed);
        }
    }

    /// <summary>Energies at the equal steps of speed, J/kg.</summary>
    public IReadOnlyList<double> Energies => _energies;

    /// <summary>The formula itself, J/kg.</summary>
    /// <param name="speed">Mean speed in the pipe, m/s; not negative.</param>
    /// <returns>J/kg.</returns>
    public double Exact(double speed)
    {
        var kinetic = 0.5 * speed * speed * _pipe.LengthMetres / _pipe.BoreMetres;
        if (_pipe.FrictionFactor is { } fixedFactor)
        {
            return fixedFactor * kinetic;
        }

        if (_viscosity == 0 || speed == 0)
        {
            return 0;
        }

        var re = speed * _pipe.BoreMetres / _viscosity;
        return re <= LaminarEnds ? 64 / re * kinetic : Between(re) * kinetic; // sending (4)
    }

    internal double Energy(double speed, out double slope)
    {
        var place = speed * CellsPerSpeed;
        if (place >= Cells)
        {
            var factor = _energies[Cells] / (HighestSpeed * HighestSpeed);
            slope = 2 * factor * speed;
            return factor * speed * speed;
        }

        var cell = (int)place;
        var low = _energies[cell];
        var rise = _energies[cell + 1] - low;
        slope = rise * CellsPerSpeed;
        return low + (place - cell) * rise;
    }

    // Between laminar and turbulent nobody knows; the factor goes over smoothly so that the step sees no jump.
    private double Between(double re)
    {
        var roughness = _pipe.RoughnessMetres / _pipe.BoreMetres;
        var turbulent = Haaland(Math.Max(re, LaminarEnds), roughness);
        if (re >= TurbulentBegins)
        {
            return turbulent;
        }

        var part = (re - LaminarEnds) / (TurbulentBegins - LaminarEnds);
        var weight = part * part * (3 - 2 * part); // sending (6)
        return 64 / re + weight * (turbulent - 64 / re);
    }

    private static double Haaland(double re, double roughness)
    {
        var root = -1.8 * Math.Log10(Math.Pow(roughness / 3.7, 1.11) + 6.9 / re); // sending (5)
        return 1 / (root * root);
    }
}
