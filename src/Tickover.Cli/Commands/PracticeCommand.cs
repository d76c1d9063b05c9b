using System.CommandLine;
using System.Globalization;
using System.Text;
using Tickover.Cli.Input;
using Tickover.Cli.Output;
using Tickover.Practice;
using Tickover.Practice.Talk;
using Tickover.Workshop.Balance.Documents;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover practice</c>: a virtual engine to balance, by words or by lines of JSON.</summary>
internal sealed class PracticeCommand : ExampledCommand
{
    private readonly Terminal _terminal;
    private readonly Argument<string> _file = new("CAR") { Description = "The car document or plan of the engine to practise on." };
    private readonly Option<string> _seed = new("--seed") { Description = "Which car of this kind: any whole number. The same number gives the same car.", HelpName = "N", DefaultValueFactory = _ => "1" };
    private readonly Option<string> _difficulty = new("--difficulty") { Description = "0 out of adjustment, 1 a hidden fault, 2 two, 3 two with a worse meter and an engine not yet hot.", HelpName = "D", DefaultValueFactory = _ => "0" };
    private readonly Option<bool> _json = new("--json") { Description = "Acts in and readings out as lines of JSON (docs/practice.md, docs/schemas/practice.schema.json)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public PracticeCommand(Terminal terminal)
        : base(
            "practice",
            "Runs a virtual engine to practise balancing on: acts by the standard input, readings by the standard output.",
            "tickover practice samples/osprey-v8.car.json --seed 7 --difficulty 1",
            "tickover practice samples/dunlin.plan.json --seed 3 --json")
    {
        _terminal = terminal;
        Add(_file);
        Add(_seed);
        Add(_difficulty);
        Add(_json);
        SetAction(RunAsync);
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var engine = Read(parsed);
        if (!engine.Good)
        {
            await _terminal.Error.WriteLineAsync(engine.Complaint);
            return ExitCode.UnusableInput;
        }

        var advice = new PracticeAdvice(engine.Value);
        Func<string, string> answer;
        if (parsed.GetValue(_json))
        {
            var protocol = new PracticeProtocol(engine.Value, advice.Json);
            await SayAsync(protocol.Greeting() + "\n");
            answer = line => protocol.Answer(line) + "\n";
        }
        else
        {
            var talk = new PracticeTalk(engine.Value, () => advice.Text(_terminal.Width));
            await SayAsync(talk.Greeting());
            answer = talk.Answer;
        }

        using var input = new StreamReader(_terminal.Input(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        while (!engine.Value.Finished && await input.ReadLineAsync(cancellation) is { } line)
        {
            if (!string.IsNullOrWhiteSpace(line))
            {
                await SayAsync(answer(line));
            }
        }

        return ExitCode.Done;
    }

    // whoever asked waits for the answer, so nothing is held back
    private async Task SayAsync(string text)
    {
        await _terminal.Output.WriteAsync(text);
        await _terminal.Output.FlushAsync();
    }

    private Answer<PracticeEngine> Read(ParseResult parsed)
    {
        var path = parsed.GetRequiredValue(_file);
        if (string.Equals(path, CarFile.StandardInput, StringComparison.Ordinal))
        {
            return Answer<PracticeEngine>.No("The standard input is where acts come from. Name the file of a car or plan, such as samples/osprey-v8.car.json.");
        }

        if (!int.TryParse(parsed.GetValue(_seed), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var seed))
        {
            return Answer<PracticeEngine>.No($"--seed {parsed.GetValue(_seed)}: a whole number, such as 7.");
        }

        if (!int.TryParse(parsed.GetValue(_difficulty), NumberStyles.None, CultureInfo.InvariantCulture, out var difficulty) || difficulty > PracticeEngine.Hardest)
        {
            return Answer<PracticeEngine>.No($"--difficulty {parsed.GetValue(_difficulty)}: 0, 1, 2 or 3.");
        }

        var plan = Plan(path);
        return plan.Good ? PracticeEngine.Start(plan.Value, seed, difficulty) : Answer<PracticeEngine>.No(plan.Complaint);
    }

    private Answer<EnginePlan> Plan(string path)
    {
        var text = CarFile.Read(path, _terminal);
        if (!text.Good)
        {
            return Answer<EnginePlan>.No(text.Complaint);
        }

        var (plan, faults) = RoundsDocument.Plan(text.Value);
        return plan is null ? Answer<EnginePlan>.No(string.Join(Environment.NewLine, faults.Select(f => $"{path}: {f}"))) : plan;
    }
}
