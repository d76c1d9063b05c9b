namespace Tickover.Bench.Pits;

/// <summary>Draws that are the same on every machine.</summary>
internal sealed class PitDice(ulong seed)
{
    private ulong _state = unchecked(seed * 0x9E3779B97F4A7C15UL);

    /// <summary>Above 0, below 1.</summary>
    internal double Unit()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15UL;
            var z = _state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return (((z ^ (z >> 31)) >> 11) + 0.5) * (1.0 / (1UL << 53));
        }
    }

    internal double Normal() => Math.Sqrt(-2 * Math.Log(Unit())) * Math.Cos(2 * Math.PI * Unit());
}
