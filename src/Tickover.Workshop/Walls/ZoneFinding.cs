using Tickover.Physics;
using Tickover.Physics.Walls;

namespace Tickover.Workshop.Walls;

/// <summary>What the readings say of one zone.</summary>
public sealed record ZoneFinding
{
    /// <summary>Which zone.</summary>
    public required ZoneKind Kind { get; init; }

    /// <summary>Its area, cm².</summary>
    public required double AreaSquareCentimetres { get; init; }

    /// <summary>Cells read in it.</summary>
    public required int Read { get; init; }

    /// <summary>How many patches of the size one reading speaks for were not read.</summary>
    public required double PatchesNotRead { get; init; }

    /// <summary>The cell with the deepest pit read; null where none was.</summary>
    public WallCell? Deepest { get; init; }

    /// <summary>The deepest pit nobody read, mm; null where all was read or readings are too few.</summary>
    public UnseenDepth? Unseen { get; init; }

    /// <summary>Chance of a hole in it now; null where readings are too few.</summary>
    public ChanceBand? HoleNow { get; init; }

    /// <summary>The likeliest figures, for the working; null where readings are too few.</summary>
    public LikeliestPair? Likeliest { get; init; }

    /// <summary>Whether there are readings enough.</summary>
    public Validity Validity { get; init; }

    /// <summary>Measured depths wanting for an estimate; zero where there is one.</summary>
    public int Wanting { get; init; }
}
