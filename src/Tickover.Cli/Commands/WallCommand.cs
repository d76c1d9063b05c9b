using Tickover.Cli.Output;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Walls;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover wall</c>: what a survey of a tank's wall says of the places nobody read, and what to do.</summary>
/// <param name="terminal">Where it reads and writes.</param>
internal sealed class WallCommand(Terminal terminal) : DocumentCommand<WallSurvey>(
    terminal,
    "wall",
    "Judges a tank's wall from pits read on a grid: the deepest not read, the chance of a hole now and over the years as a band, metals that eat each other, what to do.",
    "tickover wall samples/gannet.wall.json",
    "tickover wall samples/gannet.wall.json --json")
{
    /// <inheritdoc/>
    protected override (WallSurvey? Subject, IReadOnlyList<Fault> Faults) Read(string text)
    {
        var reading = WallDocument.Read(text);
        return (reading.Survey, reading.Faults);
    }

    /// <inheritdoc/>
    protected override (string Text, bool IsNo) Answer(WallSurvey subject, bool json, int width)
    {
        var analysis = WallAnalyst.Of(subject);
        return (json ? WallJson.Text(analysis) : new WallText(width).Text(analysis), analysis.Verdict.IsNo);
    }
}
