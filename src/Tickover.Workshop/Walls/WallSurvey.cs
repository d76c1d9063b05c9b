using Tickover.Physics.Walls;

namespace Tickover.Workshop.Walls;

/// <summary>A wall as surveyed.</summary>
public sealed record WallSurvey
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>The document it was read from.</summary>
    public required string Document { get; init; }

    /// <summary>What the wall is made of.</summary>
    public required Metal Metal { get; init; }

    /// <summary>Sound sheet, mm.</summary>
    public required double ThicknessMillimetres { get; init; }

    /// <summary>Least and most the pits can have been growing, years.</summary>
    public required (double Youngest, double Oldest) AgeYears { get; init; }

    /// <summary>Slowest and fastest power of growth.</summary>
    public required (double Slow, double Fast) Growth { get; init; }

    /// <summary>The outline.</summary>
    public required WallOutline Outline { get; init; }

    /// <summary>Cells over the whole outline, from the top left; also those nobody read.</summary>
    public required IReadOnlyList<WallCell> Cells { get; init; }

    /// <summary>Area of a whole cell, mm².</summary>
    public required double CellSquareMillimetres { get; init; }

    /// <summary>Whether wall left was read, and not the depth of pits.</summary>
    public required bool ReadsWallLeft { get; init; }

    /// <summary>Diameter of the spot a reading speaks for, mm; null where each cell was gone over as a whole.</summary>
    public double? SpotMillimetres { get; init; }

    /// <summary>Smallest step of the gauge, mm.</summary>
    public required double GaugeStepMillimetres { get; init; }

    /// <summary>How far a reading may be off, mm.</summary>
    public required double GaugeErrorMillimetres { get; init; }

    /// <summary>Pads and straps.</summary>
    public required IReadOnlyList<WallPad> Pads { get; init; }

    /// <summary>Other metals on it.</summary>
    public required IReadOnlyList<WallContact> Contacts { get; init; }

    /// <summary>How wet it is there.</summary>
    public required WetSurroundings Surroundings { get; init; }

    /// <summary>What it is held against.</summary>
    public required WallLimits Limits { get; init; }

    /// <summary>When it was surveyed; null where the document does not say.</summary>
    public DateOnly? Surveyed { get; init; }

    /// <summary>Cells that were read.</summary>
    public IEnumerable<WallCell> Read => Cells.Where(c => c.Reading.Kind is not CellReadingKind.NotRead);

    /// <summary>The cell with the deepest pit read; null where none was.</summary>
    public WallCell? Deepest => Read.Where(c => c.Reading.Kind is not CellReadingKind.Shallower).MaxBy(c => (c.Reading.DepthMillimetres, c.Reading.Kind));
}
