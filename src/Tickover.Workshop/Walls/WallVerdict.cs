namespace Tickover.Workshop.Walls;

/// <summary>What to do with a wall, and why.</summary>
public sealed record WallVerdict
{
    /// <summary>What.</summary>
    public required WallVerdictKind Kind { get; init; }

    /// <summary>In a line.</summary>
    public required string Heading { get; init; }

    /// <summary>Why.</summary>
    public required string Why { get; init; }

    /// <summary>Whether a patch over the worst place is refused, for there is more than one.</summary>
    public bool PatchRefused { get; init; }

    /// <summary>Years until the next survey; null where there is none.</summary>
    public double? AgainInYears { get; init; }

    /// <summary>Day of the next survey; null where the document has no date.</summary>
    public DateOnly? AgainOn { get; init; }

    /// <summary>Cells to read next, the most telling first.</summary>
    public IReadOnlyList<string> ReadNext { get; init; } = [];

    /// <summary>Whether the tank must not go on as it is.</summary>
    public bool IsNo => Kind is not WallVerdictKind.SurveyAgain;
}
