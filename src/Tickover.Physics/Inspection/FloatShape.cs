namespace Tickover.Physics.Inspection;

/// <summary>The body of a float: how much of it lies under the fuel when it is sunk so deep.</summary>
public abstract record FloatShape
{
    private const int Halvings = 60;

    /// <summary>Height from its lowest to its highest point as fitted, m.</summary>
    public abstract double HeightMetres { get; }

    /// <summary>Whole volume, m³.</summary>
    public double VolumeCubicMetres => Immersed(HeightMetres);

    /// <summary>Volume under the surface.</summary>
    /// <param name="depthMetres">Depth of the lowest point under the surface, m; none below zero, all from the height on.</param>
    /// <returns>m³; rising with the depth.</returns>
    public abstract double Immersed(double depthMetres);

    /// <summary>How deep it lies with a volume under the surface.</summary>
    /// <param name="volume">Volume, m³; zero to the whole.</param>
    /// <returns>m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The float has no such volume.</exception>
    public double DepthOf(double volume)
    {
        Precondition.Within(volume, 0, VolumeCubicMetres);
        var (low, high) = (0.0, HeightMetres);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Immersed(middle) < volume ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
