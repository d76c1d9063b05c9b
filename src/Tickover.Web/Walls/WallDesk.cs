using Tickover.Web.Worksheets;
using Tickover.Workshop.Leaks;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Walls;

namespace Tickover.Web.Walls;

/// <summary>Surveys of walls and leak tests in hand.</summary>
public sealed class WallDesk
{
    /// <summary>Makes the shelves.</summary>
    /// <param name="options">Names the folder of the samples.</param>
    public WallDesk(WebAppOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        Walls = new(options.SamplesFolder, ".wall.json", text => WallDocument.Read(text) is var reading ? (reading.Survey is { } survey ? WallAnalyst.Of(survey) : null, reading.Faults) : default);
        Leaks = new(options.SamplesFolder, ".leak.json", text => LeakDocument.Read(text) is var reading ? (reading.Sheet is { } sheet ? LeakAnalyst.Of(sheet) : null, reading.Faults) : default);
        Intake = new()
        {
            Address = "/walls",
            Title = "Walls and leaks",
            Where = "What is left of a tank, and whether it is tight",
            Ask = "A survey or a leak test",
            Lead = "Pits or wall left on a grid over the tank, or pressures and temperatures over time.",
            Guides = [("/wall-document", "How a survey is written down"), ("/leak-document", "How a leak test is written down")],
            Example = "tern.wall.json or tern.leak.json",
            Cautions = [WallCautions.All[0], LeakCautions.All[0], WallCautions.All[2]],
            Stage = Stage.Storage,
            Kinds =
            [
                IntakeKind.Of(WallDocument.Format, Walls, "/walls", wall => (wall.Survey.Name, $"Wall: {wall.Survey.Read.Count()} cells read. {wall.Verdict.Heading}", "survey of ")),
                IntakeKind.Of(LeakDocument.Format, Leaks, "/leaks", leak => (leak.Sheet.Name, $"Leak test: {leak.Verdict.Heading}", "leak test of ")),
            ],
        };
    }

    /// <summary>Surveys, worked out.</summary>
    public DocumentShelf<WallAnalysis> Walls { get; }

    /// <summary>Leak tests, worked out.</summary>
    public DocumentShelf<LeakAnalysis> Leaks { get; }

    /// <summary>Where they are taken in.</summary>
    public Intake Intake { get; }
}
