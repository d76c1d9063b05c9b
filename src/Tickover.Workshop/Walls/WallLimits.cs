namespace Tickover.Workshop.Walls;

/// <summary>What a wall is held against; all may be set in the document.</summary>
public sealed record WallLimits
{
    /// <summary>Most chance of a hole that a tank may go on with.</summary>
    public double HoleChance { get; init; } = 0.05;

    /// <summary>Least part of the wall that has to be left at the deepest pit.</summary>
    public double LeastLeft { get; init; } = 0.5;

    /// <summary>Mean loss, as a part of the wall, from which the sheet as a whole is done.</summary>
    public double MeanLoss { get; init; } = 0.3;

    /// <summary>Part of the cells read with less than <see cref="LeastLeft"/>, from which a patch has nothing to hold to.</summary>
    public double ThinCells { get; init; } = 0.2;

    /// <summary>Longest time between surveys, years.</summary>
    public double LongestYears { get; init; } = 5;

    /// <summary>Where these come from.</summary>
    public const string Origin = "Our choice; no standard sets them for a car's tank. Survey again at half the time left, at the latest after five years: practice of pressure-vessel inspection (API 510, from memory).";
}
