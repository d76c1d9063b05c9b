namespace Tickover.Physics.Walls;

/// <summary>A chance with the band that what is not known leaves it.</summary>
/// <param name="Low">Lower end, 0 to 1.</param>
/// <param name="Middle">In the middle, 0 to 1.</param>
/// <param name="High">Upper end, 0 to 1.</param>
public readonly record struct ChanceBand(double Low, double Middle, double High)
{
    /// <summary>The chance that this or the other comes, each on its own.</summary>
    /// <param name="other">The other.</param>
    /// <returns>The chance of either.</returns>
    public ChanceBand Or(ChanceBand other) => new(Either(Low, other.Low), Either(Middle, other.Middle), Either(High, other.High)); // walls (20)

    private static double Either(double a, double b) => 1 - (1 - a) * (1 - b);
}
