using System.CommandLine;
using Tickover.Cli.Input;
using Tickover.Cli.Output;
using Tickover.Workshop.Supply;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover supply</c>: whether the line from tank to float chambers carries the engine, and what readings of it say.</summary>
internal sealed class SupplyCommand : ExampledCommand
{
    private readonly Terminal _terminal;
    private readonly Delivery _delivery;
    private readonly Argument<string> _file = new("FILE") { Description = "The supply document (docs/supply-document.md), or - for the standard input." };
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/supply.schema.json)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public SupplyCommand(Terminal terminal)
        : base(
            "supply",
            "Works out a fuel line from tank to float chambers: pressure and flow at idle, full load and hot, every margin, and what readings point to. Ends with 1 where it does not carry the engine.",
            "tickover supply samples/tern.supply.json",
            "tickover supply samples/tern.supply.json --json")
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

        var read = SupplyDocument.Read(text.Value);
        if (read.Supply is not { } supply)
        {
            return await RefuseAsync($"{file} cannot be used:{Environment.NewLine}{FaultTable.Text(read.Faults, _terminal.Width)}");
        }

        var analysis = SupplyAnalyst.Of(supply);
        var given = _delivery.Give(parsed, parsed.GetValue(_json) ? SupplyJson.Text(analysis) : new SupplyText(_terminal.Width).Text(analysis), cancellation);
        return given == ExitCode.Done && !analysis.Carries ? ExitCode.AnswerIsNo : given;
    }

    private async Task<int> RefuseAsync(string complaint)
    {
        await _terminal.Error.WriteLineAsync(complaint);
        return ExitCode.UnusableInput;
    }
}
