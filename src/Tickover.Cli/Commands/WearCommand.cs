using Tickover.Cli.Output;
using Tickover.Workshop.Cars;
using Tickover.Workshop.StripDown.Wear;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover wear</c>: what stripped carburettors are worn to, and what that does at idle on this engine.</summary>
/// <param name="terminal">Where it reads and writes.</param>
internal sealed class WearCommand(Terminal terminal) : DocumentCommand<WearSheet>(
    terminal,
    "wear",
    "From what was measured on stripped carburettors to what it does at idle on this engine: spindles, plates, flanges, needles, pump shots and emulsion tubes, barrel against barrel.",
    "tickover wear samples/tern.wear.json",
    "tickover wear samples/tern.wear.json --json")
{
    /// <inheritdoc/>
    protected override (WearSheet? Subject, IReadOnlyList<Fault> Faults) Read(string text) => WearDocument.Read(text);

    /// <inheritdoc/>
    protected override (string Text, bool IsNo) Answer(WearSheet subject, bool json, int width)
    {
        var answer = WearJudge.Judge(subject);
        return (json ? WearText.Json(subject, answer) : WearText.Of(subject, answer, width), answer.IsNo);
    }
}
