namespace Tickover.Physics.Estimation;

/// <summary>Normal deviates that are the same each time they are asked for, so that the same readings give the same band.</summary>
/// <remarks>SplitMix64 (Steele, Lea and Flood, OOPSLA 2014) made normal by Box and Muller's transform (Ann. Math. Statist. 29, 1958). Not thread-safe.</remarks>
internal sealed class EvenNormals
{
    private ulong _state = 1954;
    private double? _spare;

    /// <summary>The next deviate, mean 0, deviation 1.</summary>
    internal double Next()
    {
        if (_spare is { } kept)
        {
            _spare = null;
            return kept;
        }

        var (radius, angle) = (Math.Sqrt(-2 * Math.Log(Uniform())), 2 * Math.PI * Uniform());
        _spare = radius * Math.Sin(angle);
        return radius * Math.Cos(angle);
    }

    // Above 0, up to 1.
    private double Uniform()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15UL;
            var z = _state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            z ^= z >> 31;
            return ((z >> 11) + 1) * (1.0 / (1UL << 53));
        }
    }
}
