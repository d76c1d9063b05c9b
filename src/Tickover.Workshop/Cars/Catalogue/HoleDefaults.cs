namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>Emulsion and progression holes for barrels whose document gives none.</summary>
internal static class HoleDefaults
{
    private const int HolesInARow = 2;
    private const double EmulsionHoleMetres = 1.0e-3;
    private const double FirstProgressionHoleMetres = 1.1e-3;
    private const double LastProgressionHoleMetres = 1.0e-3;

    // One row above the fuel, the others spread over the well, so that the well uncovers them one after the other.
    private static readonly double[] RowsPerWellDepth = [-0.1, 0.1, 0.3, 0.5, 0.7];

    // Swept one after the other over the first 15 degrees of throttle.
    private static readonly double[] HolesPerThrottleBore = [0.02, 0.055, 0.09];

    /// <summary>Where the emulsion holes come from.</summary>
    public static Origin EmulsionOrigin { get; } =
        new(OriginKind.Assumed, "Five rows of two 1 mm holes, spread over the well's depth; read them off the tube, they shape the middle of the range.");

    /// <summary>Where the progression holes come from.</summary>
    public static Origin ProgressionOrigin { get; } =
        new(OriginKind.Assumed, "Three holes of 1 to 1.1 mm at 0.02, 0.055 and 0.09 × the throttle bore above the seated plate's edge; measure them, they decide the progression.");

    /// <summary>The emulsion rows.</summary>
    /// <param name="figures">Figures of the barrel.</param>
    /// <returns>Rows from the top down.</returns>
    public static IReadOnlyList<CarHoleRow> Emulsion(FigureResolver figures)
    {
        var depth = figures.Si("barrel.wellDepth");
        return [.. RowsPerWellDepth.Select(part => new CarHoleRow(part * depth, HolesInARow, EmulsionHoleMetres))];
    }

    /// <summary>The progression holes.</summary>
    /// <param name="figures">Figures of the barrel.</param>
    /// <returns>Holes, nearest the seated plate's edge first.</returns>
    public static IReadOnlyList<CarProgressionHole> Progression(FigureResolver figures)
    {
        var bore = figures.Si("barrel.throttleBore");
        var last = HolesPerThrottleBore[^1];
        return [.. HolesPerThrottleBore.Select(part =>
            new CarProgressionHole(part * bore, part == last ? LastProgressionHoleMetres : FirstProgressionHoleMetres))];
    }
}
