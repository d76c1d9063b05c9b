namespace Tickover.Workshop.Cars;

/// <summary>One barrel of a car: which carburettor it is in, what it feeds, what is fitted.</summary>
public sealed record CarBarrel
{
    /// <summary>Number from 1, over all carburettors.</summary>
    public required int Number { get; init; }

    /// <summary>Number of its carburettor, from 1.</summary>
    public required int Carburettor { get; init; }

    /// <summary>Path of the barrel in the document, such as <c>carburettors[0].barrels[1]</c>; a change at this path touches this barrel only.</summary>
    public required string Path { get; init; }

    /// <summary>Numbers of the cylinders it feeds, from 1.</summary>
    public required IReadOnlyList<int> Cylinders { get; init; }

    /// <summary>All figures of the barrel, given and by default (keys <c>barrel.*</c>).</summary>
    public required FigureSet Figures { get; init; }

    /// <summary>Name of the emulsion tube as the document gives it; null where it gives none.</summary>
    public string? EmulsionTube { get; init; }

    /// <summary>Rows of emulsion holes from the top down.</summary>
    public required IReadOnlyList<CarHoleRow> EmulsionHoles { get; init; }

    /// <summary>Where the rows come from.</summary>
    public required Origin EmulsionHolesOrigin { get; init; }

    /// <summary>Progression holes, nearest the seated plate's edge first.</summary>
    public required IReadOnlyList<CarProgressionHole> ProgressionHoles { get; init; }

    /// <summary>Where the holes come from.</summary>
    public required Origin ProgressionHolesOrigin { get; init; }
}
