using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>The inside of a tank: a closed surface of flat facets, so that any level at any tilt is exact. docs/physics/tanks.md.</summary>
/// <remarks>Made by <see cref="TankShapes"/> or <see cref="StlMesh"/>, which see to it that it is closed. Immutable.</remarks>
public sealed class TankShape
{
    internal TankShape(IReadOnlyList<TankFacet> facets)
    {
        Facets = facets;
        Lowest = Extreme(Math.Min);
        Highest = Extreme(Math.Max);
        var middle = Middle;
        VolumeCubicMetres = facets.Sum(f => (f.A - middle).Dot((f.B - middle).Cross(f.C - middle)) / 6);
        WallSquareMetres = facets.Sum(f => f.Area * f.Share);
    }

    /// <summary>Its facets.</summary>
    public IReadOnlyList<TankFacet> Facets { get; }

    /// <summary>What it holds to the brim, m³.</summary>
    public double VolumeCubicMetres { get; }

    /// <summary>Its wall inside, m².</summary>
    public double WallSquareMetres { get; }

    /// <summary>Rear, right and lowest corner of the box around it, m.</summary>
    public SpaceVector Lowest { get; }

    /// <summary>Front, left and highest corner of the box around it, m.</summary>
    public SpaceVector Highest { get; }

    /// <summary>Middle of the box around it, m.</summary>
    public SpaceVector Middle => 0.5 * (Lowest + Highest);

    /// <summary>The tank under a tilt, made ready for many levels.</summary>
    /// <param name="tilt">The tilt.</param>
    /// <returns>The tank so tilted.</returns>
    public TankAtTilt At(Tilt tilt) => new(this, tilt);

    /// <summary>All that is below a level.</summary>
    /// <param name="level">Level, m, as <see cref="Tilt.HeightOf"/> measures it.</param>
    /// <param name="tilt">The tilt.</param>
    /// <returns>Volume, wetted wall, surface, middle.</returns>
    public TankLevel Below(double level, Tilt tilt) => At(tilt).Below(level);

    /// <summary>The level of so much fuel.</summary>
    /// <param name="volume">Fuel, m³.</param>
    /// <param name="tilt">The tilt.</param>
    /// <returns>Level, m.</returns>
    public double Filled(double volume, Tilt tilt) => At(tilt).Filled(volume);

    /// <summary>The same tank elsewhere.</summary>
    /// <param name="way">How far it moves, m.</param>
    /// <returns>The moved tank.</returns>
    public TankShape Moved(SpaceVector way) => new([.. Facets.Select(f => f.Moved(way))]);

    /// <summary>Two tanks with one level: joined by a pipe, and given time.</summary>
    /// <param name="other">The other tank; it may not overlap this one.</param>
    /// <returns>Both as one.</returns>
    public TankShape With(TankShape other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new TankShape([.. Facets, .. other.Facets]);
    }

    private SpaceVector Extreme(Func<double, double, double> which) => Facets
        .SelectMany(f => new[] { f.A, f.B, f.C })
        .Aggregate((a, b) => new SpaceVector(which(a.X, b.X), which(a.Y, b.Y), which(a.Z, b.Z)));
}
