namespace Tickover.Bench.Road;

/// <summary>Random draws from one seed, the same on every machine.</summary>
internal sealed class Draw(int seed)
{
    private readonly Random _random = new(seed);

    internal double Between(double low, double high) => low + (high - low) * _random.NextDouble();

    /// <summary>Anywhere from −size to size.</summary>
    internal double Within(double size) => Between(-size, size);

    internal double Normal() => Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());

    /// <summary>A whole number from −most to most, never under least in size.</summary>
    internal int Steps(int least, int most) => _random.Next(least, most + 1) * (_random.Next(2) == 0 ? -1 : 1);

    internal bool Chance(double part) => _random.NextDouble() < part;

    /// <summary>An index drawn by weight.</summary>
    internal int ByWeight(IReadOnlyList<double> weights)
    {
        var at = Between(0, weights.Sum());
        for (var i = 0; i < weights.Count; i++)
        {
            at -= weights[i];
            if (at < 0)
            {
                return i;
            }
        }

        return weights.Count - 1;
    }
}
