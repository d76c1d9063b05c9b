using System.CommandLine;
using System.Text.Json;
using Tickover.Cli.Input;
using Tickover.Cli.Json;
using Tickover.Cli.Output;
using Tickover.Workshop.Balance;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover balance</c>: what the rounds say, what may be wrong, what to turn next.</summary>
internal sealed class BalanceCommand : ExampledCommand
{
    private readonly Terminal _terminal;
    private readonly RoundsInput _rounds;
    private readonly Delivery _delivery;
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/balance.schema.json)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public BalanceCommand(Terminal terminal)
        : base(
            "balance",
            "Judges rounds of readings barrel by barrel and says what to turn next, by how much, and what to expect.",
            "tickover balance samples/osprey.rounds.json",
            "tickover balance samples/osprey.rounds.json --json")
    {
        _terminal = terminal;
        _rounds = new RoundsInput(terminal);
        _delivery = new Delivery(terminal);
        _rounds.AddTo(this);
        Add(_json);
        _delivery.AddTo(this);
        SetAction(RunAsync);
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var book = _rounds.Read(parsed);
        if (!book.Good)
        {
            await _terminal.Error.WriteLineAsync(book.Complaint);
            return ExitCode.UnusableInput;
        }

        var advice = BalanceAdvice.Of(book.Value);
        var text = parsed.GetValue(_json)
            ? JsonSerializer.Serialize(BalanceDocument.Of(book.Value.Plan, advice), CommandJson.Readable.BalanceDocument) + Environment.NewLine
            : new BalanceText(_terminal.Width).Text(book.Value.Plan, advice);
        return _delivery.Give(parsed, text, cancellation);
    }
}
