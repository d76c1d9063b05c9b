using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>A tank under one tilt, made ready for many levels. docs/physics/tanks.md (4) to (8).</summary>
/// <remarks>
/// One level everywhere: fuel held back behind a hump is not known of, and air is taken to get out. A level costs only the facets it cuts;
/// those wholly below come from sums made once. Immutable, and so for any number of threads.
/// </remarks>
public sealed class TankAtTilt
{
    private const int Bands = 64;
    private const int MostSteps = 100;
    private const double Settled = 1e-14;

    private readonly SpaceVector _origin;
    private readonly SpaceVector _up;
    private readonly double _originHeight;
    private readonly SortedFacet[] _facets;
    private readonly int[][] _cut = new int[Bands][];
    private readonly WetMoments[] _below = new WetMoments[Bands];
    private readonly double[] _volumes = new double[Bands + 1];
    private readonly double _low;
    private readonly double _high;

    internal TankAtTilt(TankShape shape, Tilt tilt)
    {
        Tilt = tilt;
        _up = tilt.Up;
        _origin = shape.Middle; // sums about the middle lose the fewest digits
        _originHeight = _up.Dot(_origin);
        _facets = [.. shape.Facets.Select(f => new SortedFacet(f, _origin, _up))];
        _low = _facets.Min(f => f.Lowest);
        _high = _facets.Max(f => f.Highest);
        Sort();
        for (var band = 0; band <= Bands; band++)
        {
            _volumes[band] = Cubic(Edge(band)).Volume;
        }
    }

    /// <summary>The tilt.</summary>
    public Tilt Tilt { get; }

    /// <summary>Level at which the first drop lies, m.</summary>
    public double Lowest => _low + _originHeight;

    /// <summary>Level at which it is full, m.</summary>
    public double Highest => _high + _originHeight;

    /// <summary>All that is below a level.</summary>
    /// <param name="level">Level, m; below the tank it is empty, above full.</param>
    /// <returns>Volume, wetted wall, surface, middle.</returns>
    public TankLevel Below(double level)
    {
        var c = Math.Clamp(Precondition.Finite(level) - _originHeight, _low, _high);
        var band = BandOf(c);
        var m = _below[band];
        foreach (var facet in _cut[band])
        {
            _facets[facet].AddBelow(c, ref m);
        }

        var volume = Math.Max(0, m.Height - c * m.Flat);                                       // tanks (4)
        var below = 0.5 * (m.HeightSquared - 2 * c * m.Height + c * c * m.Flat);
        var moment = m.PlaceHeight - c * m.Place - below * _up;                                // tanks (7)
        return new TankLevel
        {
            LevelMetres = level,
            VolumeCubicMetres = volume,
            WettedSquareMetres = m.Wetted,
            SurfaceSquareMetres = Math.Max(0, -m.Flat),                                        // tanks (6)
            Centroid = volume > 0 ? _origin + 1 / volume * moment : null,
        };
    }

    /// <summary>Fuel below a level, m³: all that a strapping table asks, at a fraction of the work.</summary>
    /// <param name="level">Level, m.</param>
    /// <returns>m³.</returns>
    public double VolumeBelow(double level) => Cubic(Math.Clamp(Precondition.Finite(level) - _originHeight, _low, _high)).Volume;

    /// <summary>The level of so much fuel.</summary>
    /// <param name="volume">Fuel, m³; below zero counts as empty, more than the tank holds as full.</param>
    /// <returns>Level, m.</returns>
    public double Filled(double volume)
    {
        Precondition.Finite(volume);
        if (volume <= 0)
        {
            return Lowest;
        }

        if (volume >= _volumes[Bands])
        {
            return Highest;
        }

        var found = Array.BinarySearch(_volumes, volume);
        var band = Math.Clamp(found >= 0 ? found : ~found - 1, 0, Bands - 1);
        return Search(volume, Edge(band), Edge(band + 1)) + _originHeight;
    }

    private double Search(double volume, double low, double high)
    {
        var level = (low + high) / 2;
        for (var step = 0; step < MostSteps && high - low > Settled * (_high - _low); step++)
        {
            var (at, surface) = Cubic(level);
            if (at < volume)
            {
                low = level;
            }
            else
            {
                high = level;
            }

            var newton = level + (volume - at) / surface;                                      // tanks (8)
            var next = newton > low && newton < high ? newton : (low + high) / 2;
            if (Math.Abs(next - level) < Settled * (_high - _low))
            {
                return next;
            }

            level = next;
        }

        return level;
    }

    private (double Volume, double Surface) Cubic(double c)
    {
        var band = BandOf(c);
        var volume = _below[band].Height - c * _below[band].Flat;
        var surface = -_below[band].Flat;
        foreach (var facet in _cut[band])
        {
            _facets[facet].AddBelow(c, ref volume, ref surface);
        }

        return (Math.Max(0, volume), surface);
    }

    private double Edge(int band) => _low + (_high - _low) * band / Bands;

    private int BandOf(double c) => Math.Clamp((int)((c - _low) / (_high - _low) * Bands), 0, Bands - 1);

    private void Sort()
    {
        var cut = Enumerable.Range(0, Bands).Select(_ => new List<int>()).ToArray();
        var done = new List<int>[Bands + 1];
        for (var i = 0; i < _facets.Length; i++)
        {
            // One band to spare on either side: a level on an edge may round into the neighbour.
            var first = Math.Max(0, BandOf(_facets[i].Lowest) - 1);
            var last = Math.Min(Bands - 1, BandOf(_facets[i].Highest) + 1);
            for (var band = first; band <= last; band++)
            {
                cut[band].Add(i);
            }

            (done[last + 1] ??= []).Add(i);
        }

        var sum = default(WetMoments);
        for (var band = 0; band < Bands; band++)
        {
            foreach (var facet in done[band] ?? [])
            {
                _facets[facet].AddBelow(double.PositiveInfinity, ref sum);
            }

            _below[band] = sum;
            _cut[band] = [.. cut[band]];
        }
    }
}
