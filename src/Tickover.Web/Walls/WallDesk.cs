using Tickover.Web.Worksheets;
using Tickover.Workshop.Leaks;
using Tickover.Workshop.Walls;

namespace Tickover.Web.Walls;

/// <summary>Surveys of walls and leak tests in hand.</summary>
/// <param name="options">Names the folder of the samples.</param>
public sealed class WallDesk(WebAppOptions options)
{
    /// <summary>Surveys, worked out.</summary>
    public DocumentShelf<WallAnalysis> Walls { get; } =
        new(options.SamplesFolder, ".wall.json", text => WallDocument.Read(text).Survey is { } survey ? WallAnalyst.Of(survey) : null);

    /// <summary>Leak tests, worked out.</summary>
    public DocumentShelf<LeakAnalysis> Leaks { get; } =
        new(options.SamplesFolder, ".leak.json", text => LeakDocument.Read(text).Sheet is { } sheet ? LeakAnalyst.Of(sheet) : null);
}
