namespace Tickover.Instruments.Logs.Mending;

/// <summary>Tells whether two engine speeds are of one engine.</summary>
internal static class EngineSpeeds
{
    private const double Moves = 100;                    // rpm between the ends of a column that moves
    private const double Together = 0.10;                // of the ratio between the middle half of the rows

    /// <summary>Whether both move and their ratio does not hold.</summary>
    /// <param name="first">One speed.</param>
    /// <param name="second">The other.</param>
    /// <returns>Whether they are two engines'.</returns>
    public static bool AreTwo(ReadOnlySpan<float> first, ReadOnlySpan<float> second)
    {
        if (!MovesAtAll(first) || !MovesAtAll(second))
        {
            return false;
        }

        var ratios = new List<float>();
        for (var i = 0; i < first.Length; i++)
        {
            if (first[i] > 150 && second[i] > 0)
            {
                ratios.Add(second[i] / first[i]);
            }
        }

        ratios.Sort();
        return ratios.Count > 20 && ratios[3 * ratios.Count / 4] - ratios[ratios.Count / 4] > Together * ratios[ratios.Count / 2];
    }

    private static bool MovesAtAll(ReadOnlySpan<float> speed) => Spread.Of(speed) is var s && s.High - s.Low > Moves;
}
