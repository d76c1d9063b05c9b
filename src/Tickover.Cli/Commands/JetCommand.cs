using System.CommandLine;
using Tickover.Cli.Input;
using Tickover.Cli.Output;
using Tickover.Workshop.Strip.Jets;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover jet</c>: what jets are by stamp, gauge and flow, and whether sets are equal.</summary>
internal sealed class JetCommand : ExampledCommand
{
    private readonly Terminal _terminal;
    private readonly Delivery _delivery;
    private readonly Argument<string> _file = new("FILE") { Description = "The sheet of measured jets (docs/jets-document.md), or - for the standard input." };
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/jet.schema.json)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public JetCommand(Terminal terminal)
        : base(
            "jet",
            "Tells a jet three ways, by stamp, gauge and flow: the bore it really has, what is wrong with it, and whether a set is equal.",
            "tickover jet samples/gannet.jets.json",
            "tickover jet samples/gannet.jets.json --json")
    {
        _terminal = terminal;
        _delivery = new Delivery(terminal);
        Add(_file);
        Add(_json);
        _delivery.AddTo(this);
        SetAction(RunAsync);
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var file = parsed.GetRequiredValue(_file);
        var text = CarFile.Read(file, _terminal);
        if (!text.Good)
        {
            return await RefuseAsync(text.Complaint);
        }

        var (sheet, faults) = JetSheetDocument.Read(text.Value);
        if (sheet is null)
        {
            return await RefuseAsync($"{file} cannot be used:{Environment.NewLine}{string.Join(Environment.NewLine, faults.Select(f => "  " + f))}");
        }

        var (jets, sets) = JetJudge.Judge(sheet);
        var given = _delivery.Give(parsed, parsed.GetValue(_json) ? JetBenchText.Json(sheet, jets, sets) : JetBenchText.Of(sheet, jets, sets, _terminal.Width), cancellation);
        var isGood = jets.All(j => j.Finding is JetFinding.Agrees or JetFinding.Unknown) && sets.All(s => s.Outside.Count == 0);
        return given == ExitCode.Done && !isGood ? ExitCode.AnswerIsNo : given;
    }

    private async Task<int> RefuseAsync(string complaint)
    {
        await _terminal.Error.WriteLineAsync(complaint);
        return ExitCode.UnusableInput;
    }
}
