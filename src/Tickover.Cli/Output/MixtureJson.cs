using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Workshop.Mixture;

namespace Tickover.Cli.Output;

/// <summary>The map as JSON.</summary>
internal static class MixtureJson
{
    /// <summary>Writes the document.</summary>
    /// <param name="result">What was computed.</param>
    /// <returns>The text.</returns>
    public static string Text(MixtureResult result) =>
        JsonSerializer.Serialize(
            new MixtureDocument
            {
                Car = result.Car.Name,
                Fuel = result.Car.FuelGrade,
                StoichiometricRatio = result.Fitted.StoichiometricRatio,
                RelativeBand = result.Fitted.RelativeBand,
                Ambient = [.. result.Car.Ambient.Select(FigureLine.Of)],
                SpeedsRpm = result.Fitted.Grid.SpeedsRpm,
                ThrottleDegrees = result.Fitted.Grid.ThrottleDegrees,
                Fitted = Barrels(result.Fitted, result.Groups),
                Changes = [.. result.Changes.Select(c => new TriedChange(c.Path, c.Text))],
                Trial = result.Trial is { } trial ? Barrels(trial, result.Groups) : [],
            },
            CommandJson.Readable.MixtureDocument) + Environment.NewLine;

    /// <summary>The points of one barrel, speed by speed.</summary>
    /// <param name="map">The map.</param>
    /// <param name="number">The barrel.</param>
    /// <returns>The points.</returns>
    public static IEnumerable<MixturePoint> Points(MixtureMap map, int number)
    {
        var points = map.ForBarrel(number).Points;
        for (var i = 0; i < map.Grid.SpeedsRpm.Count; i++)
        {
            for (var j = 0; j < map.Grid.ThrottleDegrees.Count; j++)
            {
                yield return MixturePoint.Of(map.Grid.SpeedsRpm[i], map.Grid.ThrottleDegrees[j], points[i, j]);
            }
        }
    }

    private static MixtureBarrels[] Barrels(MixtureMap map, IEnumerable<IReadOnlyList<int>> groups) =>
        [.. groups.Select(g => new MixtureBarrels(g, [.. Points(map, g[0])]))];
}
