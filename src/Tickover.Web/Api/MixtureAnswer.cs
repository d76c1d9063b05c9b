using Tickover.Workshop.Mixture;

namespace Tickover.Web.Api;

/// <summary>A barrel's map as programs see it: rows of speeds, columns of openings.</summary>
/// <param name="Barrel">The barrel, from 1.</param>
/// <param name="AlikeBarrels">Barrels with this same map.</param>
/// <param name="SpeedsRpm">Engine speeds, rpm.</param>
/// <param name="ThrottleDegrees">Openings from seated, degrees.</param>
/// <param name="RelativeBand">Half width of the band on every ratio as a part of it.</param>
/// <param name="StoichiometricRatio">Stoichiometric ratio of the fuel.</param>
/// <param name="Points">The points, [speed][opening].</param>
public sealed record MixtureAnswer(
    int Barrel,
    IReadOnlyList<int> AlikeBarrels,
    IReadOnlyList<double> SpeedsRpm,
    IReadOnlyList<double> ThrottleDegrees,
    double RelativeBand,
    double StoichiometricRatio,
    IReadOnlyList<IReadOnlyList<PointAnswer>> Points)
{
    /// <summary>Says it of a map.</summary>
    /// <param name="map">The map.</param>
    /// <param name="barrelNumber">The barrel.</param>
    /// <returns>The answer.</returns>
    public static MixtureAnswer Of(MixtureMap map, int barrelNumber)
    {
        ArgumentNullException.ThrowIfNull(map);
        var barrel = map.ForBarrel(barrelNumber);
        var rows = Enumerable.Range(0, map.Grid.SpeedsRpm.Count)
            .Select(i => (IReadOnlyList<PointAnswer>)[.. Enumerable.Range(0, map.Grid.ThrottleDegrees.Count).Select(j => PointAnswer.Of(barrel.Points[i, j]))]);
        return new MixtureAnswer(
            barrelNumber, barrel.AlikeBarrels, map.Grid.SpeedsRpm, map.Grid.ThrottleDegrees, map.RelativeBand, map.StoichiometricRatio, [.. rows]);
    }
}
