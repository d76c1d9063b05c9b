using System.Globalization;
using Tickover.Physics.Walls;

namespace Tickover.Workshop.Walls;

/// <summary>Figures of a wall in words, everywhere alike.</summary>
public static class WallFigures
{
    private const char Thin = '\u202F';

    /// <summary>A depth, such as "0.38 mm".</summary>
    /// <param name="millimetres">mm.</param>
    /// <returns>Figure and unit.</returns>
    public static string Millimetres(double millimetres) => string.Create(CultureInfo.InvariantCulture, $"{millimetres:0.00}{Thin}mm");

    /// <summary>A chance, such as "under 1 %", "3 %" or "over 99 %".</summary>
    /// <param name="chance">0 to 1.</param>
    /// <returns>Words.</returns>
    public static string Chance(double chance) => chance switch
    {
        < 0.01 => $"under 1{Thin}%",
        >= 1 => "certain",
        > 0.99 => $"over 99{Thin}%",
        _ => string.Create(CultureInfo.InvariantCulture, $"{chance * 100:0}{Thin}%"),
    };

    /// <summary>A chance with its band, such as "3 % (under 1 % to 12 %)".</summary>
    /// <param name="band">The chance.</param>
    /// <returns>Words; the middle alone where all read alike.</returns>
    public static string Band(ChanceBand band) => string.Equals(Chance(band.Low), Chance(band.High), StringComparison.Ordinal)
        ? Chance(band.Middle)
        : $"{Chance(band.Middle)} ({Chance(band.Low)} to {Chance(band.High)})";

    /// <summary>A time, such as "14 months" or "2.5 years".</summary>
    /// <param name="years">Years.</param>
    /// <returns>Words.</returns>
    public static string Years(double years) => years < 1.75
        ? $"{Math.Max(1, Math.Round(years * 12)).ToString("0", CultureInfo.InvariantCulture)} month{(Math.Round(years * 12) <= 1 ? "" : "s")}"
        : string.Create(CultureInfo.InvariantCulture, $"{years:0.#} years");

    /// <summary>A part of one, such as "42 %".</summary>
    /// <param name="part">0 to 1.</param>
    /// <returns>Figure and sign.</returns>
    public static string Percent(double part) => string.Create(CultureInfo.InvariantCulture, $"{part * 100:0}{Thin}%");

    /// <summary>A depth that may be beyond the sheet: then "through".</summary>
    /// <param name="millimetres">mm.</param>
    /// <param name="thickness">Sheet, mm.</param>
    /// <returns>Words.</returns>
    public static string Depth(double millimetres, double thickness) => millimetres >= thickness ? "through" : Millimetres(Math.Max(0, millimetres));

    /// <summary>The deepest pit nobody read, such as "0.41 mm (0.28 to 0.72)".</summary>
    /// <param name="unseen">The depth.</param>
    /// <param name="thickness">Sheet, mm.</param>
    /// <returns>Words.</returns>
    public static string Depth(UnseenDepth unseen, double thickness) =>
        $"{Depth(unseen.Middle, thickness)} ({Bare(unseen.Low, thickness)} to {Bare(unseen.High, thickness)})";

    /// <summary>What stands in a cell: "0.38", "&lt;0.05", "hole"; nothing where it was not read.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>Words.</returns>
    public static string Cell(CellReading reading) => reading.Kind switch
    {
        CellReadingKind.NotRead => "",
        CellReadingKind.Hole => "hole",
        _ => (reading.Kind switch { CellReadingKind.Shallower => "<", CellReadingKind.Deeper => ">", _ => "" })
            + Math.Max(0, reading.DepthMillimetres).ToString("0.00", CultureInfo.InvariantCulture),
    };

    private static string Bare(double millimetres, double thickness) =>
        millimetres >= thickness ? "through" : Math.Max(0, millimetres).ToString("0.00", CultureInfo.InvariantCulture);
}
