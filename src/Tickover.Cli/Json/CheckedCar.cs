using Tickover.Workshop.Cars;

namespace Tickover.Cli.Json;

/// <summary>What a good document describes.</summary>
internal sealed record CheckedCar
{
    /// <summary>The car's name.</summary>
    public required string Name { get; init; }

    /// <summary>Layout in words.</summary>
    public required string Layout { get; init; }

    /// <summary>Number of cylinders.</summary>
    public required int Cylinders { get; init; }

    /// <summary>Fuel grade.</summary>
    public required string Fuel { get; init; }

    /// <summary>Figures of engine and day.</summary>
    public required IReadOnlyList<FigureLine> Figures { get; init; }

    /// <summary>Barrels, those described alike together.</summary>
    public required IReadOnlyList<CheckedBarrels> Barrels { get; init; }

    /// <summary>The car as the JSON shows it.</summary>
    /// <param name="car">The car.</param>
    /// <returns>The lines.</returns>
    public static CheckedCar Of(Car car) => new()
    {
        Name = car.Name,
        Layout = car.Layout,
        Cylinders = car.CylinderCount,
        Fuel = car.FuelGrade,
        Figures = [.. car.Engine.Concat(car.Ambient).Select(FigureLine.Of)],
        Barrels = [.. Output.AlikeBarrels.Of(car).Select(g => new CheckedBarrels(g.Numbers, [.. g.Barrel.Figures.Select(FigureLine.Of)]))],
    };
}
