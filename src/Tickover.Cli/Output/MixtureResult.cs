using Tickover.Cli.Input;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Cli.Output;

/// <summary>What <c>mixture</c> computed: the car as fitted, and a trial beside it where one was asked for.</summary>
internal sealed record MixtureResult
{
    /// <summary>The car as described.</summary>
    public required Car Car { get; init; }

    /// <summary>Its map.</summary>
    public required MixtureMap Fitted { get; init; }

    /// <summary>The map with the changes; null where there is no trial.</summary>
    public MixtureMap? Trial { get; init; }

    /// <summary>What the trial changes.</summary>
    public IReadOnlyList<CarChange> Changes { get; init; } = [];

    /// <summary>The barrels asked for, grouped by what is the same in both maps.</summary>
    public required IReadOnlyList<IReadOnlyList<int>> Groups { get; init; }

    /// <summary>Groups barrels that share a map as fitted and on trial.</summary>
    /// <param name="numbers">The barrels asked for.</param>
    /// <param name="fitted">The map as fitted.</param>
    /// <param name="trial">The map on trial, or null.</param>
    /// <returns>The groups.</returns>
    public static IReadOnlyList<IReadOnlyList<int>> Group(IEnumerable<int> numbers, MixtureMap fitted, MixtureMap? trial) =>
        [.. numbers.GroupBy(n => (fitted.ForBarrel(n).BarrelNumber, trial?.ForBarrel(n).BarrelNumber)).Select(g => g.ToArray())];
}
