using Tickover.Workshop.Cars.Catalogue;

namespace Tickover.Workshop.Cars.Reading;

/// <summary>Settings of barrels as they stand at one level of the document: once for all, for a carburettor, or for one barrel.</summary>
internal sealed record BarrelSettings
{
    /// <summary>Given figures by key.</summary>
    public required IReadOnlyDictionary<string, GivenFigure> Figures { get; init; }

    /// <summary>Name of the emulsion tube, or null.</summary>
    public string? EmulsionTube { get; init; }

    /// <summary>Emulsion rows from the top down, or null.</summary>
    public IReadOnlyList<CarHoleRow>? EmulsionHoles { get; init; }

    /// <summary>Where the emulsion rows stand.</summary>
    public string? EmulsionHolesPath { get; init; }

    /// <summary>Progression holes from the plate's edge up, or null.</summary>
    public IReadOnlyList<CarProgressionHole>? ProgressionHoles { get; init; }

    /// <summary>Where the progression holes stand.</summary>
    public string? ProgressionHolesPath { get; init; }

    /// <summary>These settings over wider ones.</summary>
    /// <param name="wider">The settings of the level above.</param>
    /// <returns>Both, the narrower first.</returns>
    public BarrelSettings Over(BarrelSettings wider)
    {
        var figures = new Dictionary<string, GivenFigure>(wider.Figures, StringComparer.Ordinal);
        foreach (var (key, figure) in Figures)
        {
            figures[key] = figure;
        }

        return new BarrelSettings
        {
            Figures = figures,
            EmulsionTube = EmulsionTube ?? wider.EmulsionTube,
            EmulsionHoles = EmulsionHoles ?? wider.EmulsionHoles,
            EmulsionHolesPath = EmulsionHolesPath ?? wider.EmulsionHolesPath,
            ProgressionHoles = ProgressionHoles ?? wider.ProgressionHoles,
            ProgressionHolesPath = ProgressionHolesPath ?? wider.ProgressionHolesPath,
        };
    }
}
