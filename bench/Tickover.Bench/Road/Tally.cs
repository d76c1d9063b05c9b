namespace Tickover.Bench.Road;

/// <summary>How many of all were within.</summary>
internal readonly record struct Tally(int Within, int All)
{
    public static Tally operator +(Tally a, Tally b) => new(a.Within + b.Within, a.All + b.All);
}
