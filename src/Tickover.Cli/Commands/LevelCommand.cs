using Tickover.Cli.Output;
using Tickover.Workshop.Cars;
using Tickover.Workshop.StripDown.Levels;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover level</c>: where the fuel stands by the dry heights of the floats, and whether a set is equal.</summary>
/// <param name="terminal">Where it reads and writes.</param>
internal sealed class LevelCommand(Terminal terminal) : DocumentCommand<LevelSheet>(
    terminal,
    "level",
    "From the dry height of each float to where the fuel will stand: equal over the set or not, which bend of the tang puts it right, and what a millimetre does to the mixture.",
    "tickover level samples/tern.level.json",
    "tickover level samples/tern.level.json --json")
{
    /// <inheritdoc/>
    protected override (LevelSheet? Subject, IReadOnlyList<Fault> Faults) Read(string text) => LevelDocument.Read(text);

    /// <inheritdoc/>
    protected override (string Text, bool IsNo) Answer(LevelSheet subject, bool json, int width)
    {
        var answer = LevelJudge.Judge(subject);
        return (json ? LevelText.Json(subject, answer) : LevelText.Of(subject, answer, width), answer.IsNo);
    }
}
