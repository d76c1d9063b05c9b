namespace Tickover.Workshop.Walls;

/// <summary>One cell of the grid drawn over a wall.</summary>
public sealed record WallCell
{
    /// <summary>Its name: a letter for the column, a number for the row from the top, such as C4.</summary>
    public required string Name { get; init; }

    /// <summary>Where it lies, mm; as the outline, to the right and up.</summary>
    public required WallBox Box { get; init; }

    /// <summary>How much of it lies inside the outline, mm².</summary>
    public required double AreaSquareMillimetres { get; init; }

    /// <summary>Under a pad or not.</summary>
    public required ZoneKind Zone { get; init; }

    /// <summary>What was read.</summary>
    public CellReading Reading { get; init; }
}
