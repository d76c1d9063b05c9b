namespace Tickover.Bench.Pits;

/// <summary>How deep the deepest pit of a patch really is, mm; what the estimate does not know.</summary>
internal sealed record PitLaw(string Name, Func<PitDice, double> Deepest)
{
    private const int PitsOfPatch = 30;

    /// <summary>What the estimate takes it to be.</summary>
    internal static PitLaw Gumbel { get; } = new("Gumbel", d => 0.35 - 0.10 * Math.Log(-Math.Log(d.Unit())));

    /// <summary>Thirty pits a patch, each exponential: nearly Gumbel.</summary>
    internal static PitLaw Exponential { get; } = new("30 exponential pits a patch", d => Of(PitsOfPatch, () => -0.12 * Math.Log(d.Unit())));

    /// <summary>Thirty pits a patch with a lighter tail.</summary>
    internal static PitLaw Weibull { get; } = new("30 Weibull pits of shape 2", d => Of(PitsOfPatch, () => 0.25 * Math.Sqrt(-Math.Log(d.Unit()))));

    /// <summary>Thirty pits a patch with a heavier tail.</summary>
    internal static PitLaw LogNormal { get; } = new("30 log-normal pits, 0.5 in the logarithm", d => Of(PitsOfPatch, () => 0.15 * Math.Exp(0.5 * d.Normal())));

    /// <summary>From three to a hundred pits a patch: the wall does not rot alike.</summary>
    internal static PitLaw Patchy { get; } = new("3 to 100 exponential pits a patch", d => Of(3 + (int)(98 * d.Unit()), () => -0.12 * Math.Log(d.Unit())));

    private static double Of(int pits, Func<double> depth)
    {
        var deepest = 0.0;
        for (var i = 0; i < pits; i++)
        {
            deepest = Math.Max(deepest, depth());
        }

        return deepest;
    }
}
