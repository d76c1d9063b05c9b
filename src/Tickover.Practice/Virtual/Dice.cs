namespace Tickover.Practice.Virtual;

/// <summary>Random numbers that are the same on every machine and release: the same seed gives the same car.</summary>
/// <remarks>SplitMix64: G. L. Steele, D. Lea, C. H. Flood, Fast splittable pseudorandom number generators, OOPSLA 2014, figure 16.</remarks>
internal sealed class Dice
{
    private ulong _state;

    /// <summary>A stream of its own for each purpose, so that what one purpose draws does not move another.</summary>
    public Dice(int seed, string purpose)
    {
        _state = unchecked((ulong)(uint)seed * 0x9E3779B97F4A7C15UL);
        foreach (var letter in purpose)
        {
            _state = unchecked((_state ^ letter) * 0x100000001B3UL);
        }

        Next();
    }

    /// <summary>From 0 up to, not including, 1.</summary>
    public double Unit() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>Evenly from one bound to the other.</summary>
    public double Between(double low, double high) => low + ((high - low) * Unit());

    /// <summary>Evenly from one bound to the other, with either sign.</summary>
    public double EitherWay(double low, double high) => (Unit() < 0.5 ? -1 : 1) * Between(low, high);

    /// <summary>One of 0 to count − 1.</summary>
    public int Below(int count) => (int)(Unit() * count);

    /// <summary>Bell-shaped about zero, cut off at three standard deviations.</summary>
    public double Normal(double deviation)
    {
        const double cutOff = 3;
        var radius = Math.Sqrt(-2 * Math.Log(1 - Unit()));
        return deviation * Math.Clamp(radius * Math.Cos(2 * Math.PI * Unit()), -cutOff, cutOff);
    }

    private ulong Next()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15UL;
            var z = _state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }
}
