using Tickover.Cli.Output;
using Tickover.Workshop.Cars;
using Tickover.Workshop.StripDown.Build;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover build</c>: what to set on the bench before the first start.</summary>
/// <param name="terminal">Where it reads and writes.</param>
internal sealed class BuildCommand(Terminal terminal) : DocumentCommand<BuildSheet>(
    terminal,
    "build",
    "Bench settings before the first start: plate gap by feeler, mixture screws, by-passes, rods of one length, by the car and its breathing and metering.",
    "tickover build samples/tern.build.json",
    "tickover build samples/tern.build.json --json")
{
    /// <inheritdoc/>
    protected override (BuildSheet? Subject, IReadOnlyList<Fault> Faults) Read(string text) => BuildDocument.Read(text);

    /// <inheritdoc/>
    protected override (string Text, bool IsNo) Answer(BuildSheet subject, bool json, int width)
    {
        var answer = BuildPlanner.Of(subject);
        return (json ? BuildText.Json(subject, answer) : BuildText.Of(subject, answer, width), answer.IsNo);
    }
}
