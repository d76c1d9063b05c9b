using Tickover.Reports.Mixture;
using Tickover.Workshop.Walls;

namespace Tickover.Reports.Walls;

/// <summary>What the pictures of a wall show.</summary>
public sealed record WallView
{
    /// <summary>The survey and what it says.</summary>
    public required WallAnalysis Analysis { get; init; }

    /// <summary>Name of the cell whose working is open; null where none is.</summary>
    public string? Chosen { get; init; }

    /// <summary>Where choosing a cell leads, by its name; null where cells cannot be chosen.</summary>
    public Func<string, string>? Address { get; init; }

    /// <summary>For a wide page or for a phone.</summary>
    public PictureSize Size { get; init; }

    /// <summary>Begins every id inside, so that several pictures live on one page.</summary>
    public required string IdPrefix { get; init; }

    /// <summary>The survey.</summary>
    public WallSurvey Survey => Analysis.Survey;
}
