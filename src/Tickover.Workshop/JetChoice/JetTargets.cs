using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.JetChoice;

/// <summary>Targets of λ by regime: the trade's, and what a workshop sets instead for a car.</summary>
/// <param name="Instead">Richest and leanest λ by regime (idle, progression, cruise, full load) where the trade's do not hold.</param>
public sealed record JetTargets(IReadOnlyDictionary<string, (double Richest, double Leanest)> Instead)
{
    /// <summary>The trade's own.</summary>
    public static JetTargets Usual { get; } = new(new Dictionary<string, (double, double)>(StringComparer.Ordinal));

    /// <summary>Names of the regimes.</summary>
    public static IReadOnlyList<string> Regimes { get; } = ["idle", "progression", "cruise", "full load"];

    /// <summary>The target at an opening.</summary>
    /// <param name="throttleDegrees">Opening from seated, degrees.</param>
    /// <returns>The band.</returns>
    public LambdaBand At(double throttleDegrees)
    {
        var usual = MixtureTargets.At(throttleDegrees);
        return Instead.TryGetValue(usual.Regime, out var set) ? usual with { Richest = set.Richest, Leanest = set.Leanest } : usual;
    }
}
