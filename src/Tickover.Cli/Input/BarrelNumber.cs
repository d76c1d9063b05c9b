using System.Globalization;
using Tickover.Workshop.Cars;

namespace Tickover.Cli.Input;

/// <summary>Reads which barrel is meant.</summary>
internal static class BarrelNumber
{
    /// <summary>Reads a number.</summary>
    /// <param name="text">As typed, or null for all barrels.</param>
    /// <param name="car">The car.</param>
    /// <returns>The barrels meant, or a complaint.</returns>
    public static Answer<IReadOnlyList<int>> Read(string? text, Car car)
    {
        if (text is null)
        {
            return car.Barrels.Select(b => b.Number).ToArray();
        }

        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && car.Barrels.Any(b => b.Number == number)
            ? new[] { number }
            : Answer<IReadOnlyList<int>>.No($"--barrel {text}: {car.Name} has barrels 1 to {car.Barrels.Count}.");
    }
}
