namespace Tickover.Workshop.Mixture;

/// <summary>The mixture of every barrel over speed and throttle.</summary>
public sealed record MixtureMap
{
    /// <summary>The grid.</summary>
    public required SurveyGrid Grid { get; init; }

    /// <summary>One map for each kind of barrel; barrels alike share one.</summary>
    public required IReadOnlyList<BarrelMap> Barrels { get; init; }

    /// <summary>Half width of the band on every air/fuel ratio as a part of it, 1. Uncalibrated 0.10 (reference: design section 4).</summary>
    public required double RelativeBand { get; init; }

    /// <summary>Stoichiometric ratio of the fuel used, 1.</summary>
    public required double StoichiometricRatio { get; init; }

    /// <summary>The map that holds for a barrel.</summary>
    /// <param name="barrelNumber">Number from 1.</param>
    /// <returns>The map.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such barrel.</exception>
    public BarrelMap ForBarrel(int barrelNumber) =>
        Barrels.FirstOrDefault(b => b.AlikeBarrels.Contains(barrelNumber))
        ?? throw new ArgumentOutOfRangeException(nameof(barrelNumber), barrelNumber, $"barrels 1 to {Barrels.Sum(b => b.AlikeBarrels.Count)}");
}
