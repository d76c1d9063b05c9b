using Tickover.Cli.Output;
using Tickover.Workshop.Cars;
using Tickover.Workshop.StripDown.Jets;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover jet</c>: what jets are by stamp, gauge and flow, and whether sets are equal.</summary>
/// <param name="terminal">Where it reads and writes.</param>
internal sealed class JetCommand(Terminal terminal) : DocumentCommand<JetSheet>(
    terminal,
    ("jet", "jets"),
    "Tells a jet three ways, by stamp, gauge and flow: the bore it really has, what is wrong with it, and whether a set is equal.",
    "tickover jet samples/gannet.jets.json",
    "tickover jet samples/gannet.jets.json --json")
{
    /// <inheritdoc/>
    protected override (JetSheet? Subject, IReadOnlyList<Fault> Faults) Read(string text) => JetSheetDocument.Read(text);

    /// <inheritdoc/>
    protected override (string Text, bool IsNo) Answer(JetSheet subject, bool json, int width)
    {
        var (jets, sets) = JetJudge.Judge(subject);
        var isNo = jets.Any(j => j.Finding is not (JetFinding.Agrees or JetFinding.Unknown)) || sets.Any(s => s.Outside.Count > 0);
        return (json ? JetBenchText.Json(subject, jets, sets) : JetBenchText.Of(subject, jets, sets, width), isNo);
    }
}
