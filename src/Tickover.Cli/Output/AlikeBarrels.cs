using System.Globalization;
using Tickover.Workshop.Cars;

namespace Tickover.Cli.Output;

/// <summary>Barrels that are described alike, so that they are listed once.</summary>
/// <param name="Numbers">Their numbers, rising.</param>
/// <param name="Barrel">The first of them.</param>
internal sealed record AlikeBarrels(IReadOnlyList<int> Numbers, CarBarrel Barrel)
{
    /// <summary>The groups of a car, in order of their first barrel.</summary>
    /// <param name="car">The car.</param>
    /// <returns>The groups.</returns>
    public static IReadOnlyList<AlikeBarrels> Of(Car car) =>
        [.. car.Barrels.GroupBy(Likeness, StringComparer.Ordinal).Select(g => new AlikeBarrels([.. g.Select(b => b.Number)], g.First()))];

    /// <summary>"Barrel 3", "Barrels 1 to 6" or "Barrels 1, 3, 5".</summary>
    /// <param name="numbers">Numbers, rising.</param>
    /// <returns>The words.</returns>
    public static string Words(IReadOnlyList<int> numbers)
    {
        var running = numbers.Count > 2 && numbers[^1] - numbers[0] == numbers.Count - 1;
        return numbers.Count == 1
            ? $"Barrel {numbers[0]}"
            : running ? $"Barrels {numbers[0]} to {numbers[^1]}" : $"Barrels {string.Join(", ", numbers)}";
    }

    private static string Likeness(CarBarrel barrel) => string.Join(
        '|',
        barrel.Figures.Select(f => $"{f.Definition.Key}={f.Si.ToString("R", CultureInfo.InvariantCulture)}{f.Origin.Kind}")
            .Concat(barrel.EmulsionHoles.Select(h => h.ToString()))
            .Concat(barrel.ProgressionHoles.Select(h => h.ToString())));
}
