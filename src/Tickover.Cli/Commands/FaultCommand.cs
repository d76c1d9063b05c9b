using System.CommandLine;
using System.Text;
using Tickover.Cli.Input;
using Tickover.Cli.Output;
using Tickover.Workshop.FaultFinding;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover fault</c>: from symptoms to the cause, test by test.</summary>
internal sealed class FaultCommand : ExampledCommand
{
    private static readonly string[] Lists = ["symptoms", "causes", "tests"];

    private readonly Terminal _terminal;
    private readonly Delivery _delivery;
    private readonly FaultInput _input;
    private readonly Option<string?> _list = new("--list") { Description = "Print what is known: symptoms, causes or tests.", HelpName = "WHAT" };
    private readonly Option<bool> _ask = new("--ask") { Description = "Ask test after test, one answer a line on the standard input, until a cause stands. Also: undo, stop." };
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/fault.schema.json)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public FaultCommand(Terminal terminal)
        : base(
            "fault",
            "Ranks the causes of what is wrong with a car, and says what to look at next. Ends with 1 where no cause stands and no test is left that would tell.",
            "tickover fault --symptom \"flat spot only on a stab\"",
            "tickover fault --symptom dies-after-miles --ruled-out coil-hot --answer look-vent-blocked=no",
            "tickover fault --case samples/tern.fault.json --json",
            "tickover fault --symptom flat-spot-stab --ask",
            "tickover fault --list symptoms")
    {
        _terminal = terminal;
        _delivery = new Delivery(terminal);
        _input = new FaultInput(terminal);
        _list.AcceptOnlyFromAmong(Lists);
        _input.AddTo(this);
        Add(_list);
        Add(_ask);
        Add(_json);
        _delivery.AddTo(this);
        SetAction(RunAsync);
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        if (parsed.GetValue(_ask) && _input.TakesStandardInput(parsed))
        {
            return await RefuseAsync("With --ask the standard input is where answers come from. Name the file of the case.");
        }

        var knowledge = _input.Knowledge(parsed);
        if (!knowledge.Good)
        {
            return await RefuseAsync(knowledge.Complaint);
        }

        var text = new FaultText(knowledge.Value, _terminal.Width);
        if (parsed.GetValue(_list) is { } list)
        {
            return _delivery.Give(parsed, list switch { "symptoms" => text.Symptoms(), "causes" => text.Causes(), _ => text.Tests() }, cancellation);
        }

        var given = _input.Case(parsed, knowledge.Value);
        if (!given.Good)
        {
            return await RefuseAsync(given.Complaint);
        }

        var told = parsed.GetValue(_ask) ? await AskAsync(knowledge.Value, given.Value, text, cancellation) : given.Value;
        return Give(parsed, knowledge.Value, told, text, cancellation);
    }

    private int Give(ParseResult parsed, FaultKnowledge knowledge, FaultCase given, FaultText text, CancellationToken cancellation)
    {
        var outlook = FaultFinder.Weigh(knowledge, given);
        var done = _delivery.Give(parsed, parsed.GetValue(_json) ? FaultJson.Text(knowledge, given, outlook) : text.Outlook(given, outlook), cancellation);
        return done == ExitCode.Done && outlook.Standing == FaultStanding.Exhausted ? ExitCode.AnswerIsNo : done;
    }

    // The talk goes beside the data: what is printed in the end is the same as without questions.
    private async Task<FaultCase> AskAsync(FaultKnowledge knowledge, FaultCase given, FaultText text, CancellationToken cancellation)
    {
        using var input = new StreamReader(_terminal.Input(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        while (FaultFinder.Weigh(knowledge, given).Next is { } next)
        {
            await _terminal.Error.WriteAsync(text.Question(next));
            var reply = await ReplyAsync(input, next.Test, cancellation);
            if (reply is null)
            {
                break;
            }

            given = reply.Test.Length == 0 ? given.Undone() : given.With(reply);
        }

        return given;
    }

    // Null: stop. A test without a name: take the last answer back.
    private async Task<FaultGiven?> ReplyAsync(StreamReader input, FaultTest test, CancellationToken cancellation)
    {
        while (await input.ReadLineAsync(cancellation) is { } line)
        {
            switch (line.Trim().ToUpperInvariant())
            {
                case "STOP":
                    return null;
                case "UNDO":
                    return new FaultGiven(string.Empty, string.Empty);
                case "":
                    continue;
            }

            if (FaultReply.Read(test, line) is { } reply)
            {
                return reply;
            }

            await _terminal.Error.WriteLineAsync($"\"{line.Trim()}\" is no answer here. Write {FaultReply.Allowed(test)}; or undo, or stop.");
        }

        return null;
    }

    private async Task<int> RefuseAsync(string complaint)
    {
        await _terminal.Error.WriteLineAsync(complaint);
        return ExitCode.UnusableInput;
    }
}
