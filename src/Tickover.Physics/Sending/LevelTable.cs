namespace Tickover.Physics.Sending;

/// <summary>Level against volume of a tank on level ground: equal steps of volume, straight lines between them.</summary>
/// <remarks>Above the roof the fuel stands in a narrow filler neck, so that a brim-full tank pushes back. Thread-safe.</remarks>
public sealed class LevelTable
{
    /// <summary>Equal steps of volume from empty to full.</summary>
    public const int Cells = 256;

    /// <summary>Area of the filler neck, m²: a neck of 40 mm (an assumption; it only has to be small).</summary>
    public const double NeckAreaSquareMetres = 0.00125;

    private readonly double[] _levels;
    private readonly double _cellsPerVolume;

    private LevelTable(double[] levels, double capacity)
    {
        _levels = levels;
        CapacityCubicMetres = capacity;
        _cellsPerVolume = Cells / capacity;
    }

    /// <summary>Volume up to the roof, m³.</summary>
    public double CapacityCubicMetres { get; }

    /// <summary>Height of the roof above the floor, m.</summary>
    public double HeightMetres => _levels[Cells];

    /// <summary>Levels at the equal steps of volume, m.</summary>
    public IReadOnlyList<double> Levels => _levels;

    /// <summary>The table of a tank whose plan areas were measured at some heights, straight lines between them.</summary>
    /// <param name="sections">Heights above the floor in m, rising from zero, and areas in m², not negative, at least two.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">Fewer than two heights, not rising from zero, or no volume between two of them.</exception>
    public static LevelTable FromAreas(IReadOnlyList<(double HeightMetres, double AreaSquareMetres)> sections)
    {
        ArgumentNullException.ThrowIfNull(sections);
        if (sections.Count < 2 || sections[0].HeightMetres != 0)
        {
            throw new ArgumentException("A tank needs at least two heights, the first of them zero.", nameof(sections));
        }

        var volumes = Volumes(sections);
        var levels = new double[Cells + 1];
        for (int i = 1, s = 1; i < levels.Length; i++)
        {
            var volume = volumes[^1] * i / Cells;
            while (s < volumes.Length - 1 && volumes[s] < volume)
            {
                s++;
            }

            levels[i] = Level(sections[s - 1], sections[s], volume - volumes[s - 1]);
        }

        levels[Cells] = sections[^1].HeightMetres;
        return new LevelTable(levels, volumes[^1]);
    }

    /// <summary>A tank with upright walls.</summary>
    /// <param name="areaSquareMetres">Plan area, m².</param>
    /// <param name="heightMetres">Floor to roof, m.</param>
    /// <returns>The table.</returns>
    public static LevelTable Upright(double areaSquareMetres, double heightMetres) =>
        FromAreas([(0, areaSquareMetres), (heightMetres, areaSquareMetres)]);

    /// <summary>Level of a volume, m above the floor.</summary>
    /// <param name="volume">m³; below zero and above full the line goes on.</param>
    /// <returns>m.</returns>
    public double Level(double volume) => Level(volume, out _);

    /// <summary>Volume up to a level, m³.</summary>
    /// <param name="level">m above the floor; below the floor zero.</param>
    /// <returns>m³.</returns>
    public double Volume(double level)
    {
        if (level >= HeightMetres)
        {
            return CapacityCubicMetres + (level - HeightMetres) * NeckAreaSquareMetres;
        }

        if (level <= 0)
        {
            return 0;
        }

        var found = Array.BinarySearch(_levels, level);
        var upper = found >= 0 ? Math.Max(1, found) : ~found;
        var (low, high) = (_levels[upper - 1], _levels[upper]);
        return (upper - 1 + (level - low) / (high - low)) / _cellsPerVolume;
    }

    internal double Level(double volume, out double slope)
    {
        var place = volume * _cellsPerVolume;
        if (place >= Cells)
        {
            slope = 1 / NeckAreaSquareMetres;
            return _levels[Cells] + (volume - CapacityCubicMetres) * slope;
        }

        var cell = place > 0 ? (int)place : 0;
        var low = _levels[cell];
        var rise = _levels[cell + 1] - low;
        slope = rise * _cellsPerVolume;
        return low + (place - cell) * rise;
    }

    private static double[] Volumes(IReadOnlyList<(double HeightMetres, double AreaSquareMetres)> sections)
    {
        var volumes = new double[sections.Count];
        for (var i = 1; i < volumes.Length; i++)
        {
            var (below, above) = (sections[i - 1], sections[i]);
            Precondition.NotNegative(below.AreaSquareMetres);
            Precondition.NotNegative(above.AreaSquareMetres);
            var slab = Precondition.Positive(above.HeightMetres - below.HeightMetres) * 0.5 * (below.AreaSquareMetres + above.AreaSquareMetres);
            volumes[i] = volumes[i - 1] + Precondition.Positive(slab);
        }

        return volumes;
    }

    // The area runs straight between two heights, so the volume is a parabola of the height: solved without a cancelling difference.
    private static double Level((double Height, double Area) below, (double Height, double Area) above, double volume)
    {
        var rise = above.Height - below.Height;
        var growth = (above.Area - below.Area) / rise;
        var root = Math.Sqrt(Math.Max(0, below.Area * below.Area + 2 * growth * volume));
        return below.Height + Math.Min(rise, 2 * volume / (below.Area + root)); // sending (1)
    }
}
