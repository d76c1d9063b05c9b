namespace Tickover.Physics.Sending;

/// <summary>Level of the fuel in a tank against its volume, the tank level. docs/physics/sending.md (1).</summary>
/// <remarks>
/// Made from areas of the free surface over height. Held as 256 layers of equal volume, straight between them: exact at every layer's end, so exact
/// everywhere for a box. Above the top fuel stands in the filler neck, which keeps a full tank from taking more.
/// </remarks>
public sealed class LevelTable
{
    /// <summary>Layers of equal volume.</summary>
    public const int Layers = 256;

    /// <summary>Area of the filler neck where none is given, m²: a neck of 50 mm; common practice, no source.</summary>
    public const double DefaultNeckSquareMetres = 2e-3;

    private readonly double[] _levels = new double[Layers + 1];

    private LevelTable(double[] heights, double[] areas, double neck)
    {
        NeckSquareMetres = neck;
        HeightMetres = heights[^1];
        var volumes = new double[heights.Length];
        for (var i = 1; i < heights.Length; i++)
        {
            volumes[i] = volumes[i - 1] + 0.5 * (areas[i - 1] + areas[i]) * (heights[i] - heights[i - 1]);
        }

        CapacityCubicMetres = volumes[^1];
        var at = 1;
        for (var k = 0; k <= Layers; k++)
        {
            var volume = CapacityCubicMetres * k / Layers;
            while (at < heights.Length - 1 && volumes[at] < volume)
            {
                at++;
            }

            _levels[k] = heights[at - 1] + Rise(volume - volumes[at - 1], areas[at - 1], areas[at], heights[at] - heights[at - 1]);
        }
    }

    /// <summary>Volume to the top, without the neck, m³.</summary>
    public double CapacityCubicMetres { get; }

    /// <summary>Height of the tank inside, m.</summary>
    public double HeightMetres { get; }

    /// <summary>Area of the filler neck above the top, m².</summary>
    public double NeckSquareMetres { get; }

    /// <summary>Levels at 0, 1/256, 2/256 and so on of the capacity, m.</summary>
    public IReadOnlyList<double> Levels => _levels;

    internal double[] Nodes => _levels;

    /// <summary>A tank with the same section at every height.</summary>
    /// <param name="squareMetres">Area of the free surface, m²; above zero.</param>
    /// <param name="heightMetres">Height inside, m; above zero.</param>
    /// <param name="neckSquareMetres">Area of the filler neck, m²; above zero.</param>
    /// <returns>The table.</returns>
    public static LevelTable Box(double squareMetres, double heightMetres, double neckSquareMetres = DefaultNeckSquareMetres) =>
        FromAreas([0, heightMetres], [squareMetres, squareMetres], neckSquareMetres);

    /// <summary>A tank by the area of its free surface at some heights, straight between them.</summary>
    /// <param name="heightsMetres">Heights above the floor, m; the first 0, rising; at least two.</param>
    /// <param name="squareMetres">The area at each, m²; none below zero, no two neighbours both zero.</param>
    /// <param name="neckSquareMetres">Area of the filler neck, m²; above zero.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">Heights do not start at zero or do not rise, or the counts differ.</exception>
    public static LevelTable FromAreas(
        IReadOnlyList<double> heightsMetres, IReadOnlyList<double> squareMetres, double neckSquareMetres = DefaultNeckSquareMetres)
    {
        Precondition.Positive(neckSquareMetres);
        if (heightsMetres.Count != squareMetres.Count || heightsMetres.Count < 2 || heightsMetres[0] != 0)
        {
            throw new ArgumentException($"{heightsMetres.Count} heights with {squareMetres.Count} areas; there must be two or more of each, the first height 0.", nameof(heightsMetres));
        }

        for (var i = 0; i < heightsMetres.Count; i++)
        {
            Precondition.NotNegative(squareMetres[i]);
            if (i > 0 && !(heightsMetres[i] > heightsMetres[i - 1] && squareMetres[i] + squareMetres[i - 1] > 0))
            {
                throw new ArgumentException($"Height {i} was {heightsMetres[i]} after {heightsMetres[i - 1]}; heights must rise over some area.", nameof(heightsMetres));
            }
        }

        return new LevelTable([.. heightsMetres], [.. squareMetres], neckSquareMetres);
    }

    /// <summary>Level of a volume, the tank level.</summary>
    /// <param name="cubicMetres">Fuel in the tank, m³. Below zero the first layer goes on, above the capacity the neck.</param>
    /// <returns>Above the floor, m.</returns>
    public double LevelOf(double cubicMetres)
    {
        var x = cubicMetres * (Layers / CapacityCubicMetres);
        if (x >= Layers)
        {
            return HeightMetres + (cubicMetres - CapacityCubicMetres) / NeckSquareMetres;
        }

        var i = Math.Max(0, (int)x);
        return _levels[i] + (x - i) * (_levels[i + 1] - _levels[i]); // sending (1)
    }

    /// <summary>Volume of a level, the tank level.</summary>
    /// <param name="metres">Above the floor, m.</param>
    /// <returns>m³.</returns>
    public double VolumeAt(double metres)
    {
        if (metres >= HeightMetres)
        {
            return CapacityCubicMetres + (metres - HeightMetres) * NeckSquareMetres;
        }

        var (low, high) = (0, Layers);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = _levels[middle] <= metres ? (middle, high) : (low, middle);
        }

        var layer = CapacityCubicMetres / Layers;
        return (low + (metres - _levels[low]) / (_levels[low + 1] - _levels[low])) * layer;
    }

    /// <summary>Area of the free surface at a volume.</summary>
    /// <param name="cubicMetres">Fuel in the tank, m³.</param>
    /// <returns>m².</returns>
    public double AreaAt(double cubicMetres)
    {
        var layer = CapacityCubicMetres / Layers;
        if (cubicMetres >= CapacityCubicMetres)
        {
            return NeckSquareMetres;
        }

        var i = Math.Max(0, (int)(cubicMetres / layer));
        return layer / (_levels[i + 1] - _levels[i]);
    }

    // Height of a volume in a layer whose area goes straight from one end to the other: root of the quadratic that stays good where both are alike.
    private static double Rise(double volume, double from, double to, double height)
    {
        var slope = (to - from) / height;
        var root = Math.Sqrt(Math.Max(0, from * from + 2 * slope * volume));
        return volume <= 0 ? 0 : Math.Min(height, 2 * volume / (from + root));
    }
}
