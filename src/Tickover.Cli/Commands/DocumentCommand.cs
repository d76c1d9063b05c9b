using System.CommandLine;
using Tickover.Cli.Input;
using Tickover.Cli.Output;
using Tickover.Workshop.Cars;

namespace Tickover.Cli.Commands;

/// <summary>A command that works out one document and answers yes or no: exit code 1 where the verdict is no.</summary>
/// <typeparam name="TSubject">What the document describes.</typeparam>
internal abstract class DocumentCommand<TSubject> : ExampledCommand
    where TSubject : class
{
    private readonly Terminal _terminal;
    private readonly Delivery _delivery;
    private readonly Argument<string> _file;
    private readonly Option<bool> _json;

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    /// <param name="name">Its name, also that of its schema, and the name of its guide without "-document".</param>
    /// <param name="description">What it does, in a sentence.</param>
    /// <param name="examples">Lines that run on the samples.</param>
    protected DocumentCommand(Terminal terminal, (string Name, string Guide) name, string description, params string[] examples)
        : base(name.Name, description, examples)
    {
        _terminal = terminal;
        _delivery = new Delivery(terminal);
        _file = new Argument<string>("FILE") { Description = $"The {name.Guide} document (docs/{name.Guide}-document.md), or - for the standard input." };
        _json = new Option<bool>("--json") { Description = $"Print JSON (docs/schemas/{name.Name}.schema.json)." };
        Add(_file);
        Add(_json);
        _delivery.AddTo(this);
        SetAction(RunAsync);
    }

    /// <summary>Makes a command whose guide has its name.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    /// <param name="name">Its name; also that of its guide and its schema.</param>
    /// <param name="description">What it does, in a sentence.</param>
    /// <param name="examples">Lines that run on the samples.</param>
    protected DocumentCommand(Terminal terminal, string name, string description, params string[] examples)
        : this(terminal, (name, name), description, examples)
    {
    }

    /// <summary>Where the command reads and writes.</summary>
    protected Terminal Terminal => _terminal;

    /// <summary>What is said to be going on where it takes long.</summary>
    protected virtual string Doing => "Working it out";

    /// <summary>Reads the document.</summary>
    /// <param name="text">Its text.</param>
    /// <returns>What it describes, or all that is wrong with it.</returns>
    protected abstract (TSubject? Subject, IReadOnlyList<Fault> Faults) Read(string text);

    /// <summary>Reads a document that may name files beside it.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="file">Its own file, or - for the standard input.</param>
    /// <returns>What it describes, or all that is wrong with it.</returns>
    protected virtual (TSubject? Subject, IReadOnlyList<Fault> Faults) Read(string text, string file) => Read(text);

    /// <summary>Does to the subject what the command's own options ask.</summary>
    /// <param name="subject">What the document describes.</param>
    /// <param name="parsed">The command line.</param>
    /// <returns>What is to be worked out, or why it cannot be.</returns>
    protected virtual Answer<TSubject> Asked(TSubject subject, ParseResult parsed) => subject;

    /// <summary>Works it out.</summary>
    /// <param name="subject">What the document describes.</param>
    /// <param name="json">Whether JSON is wanted.</param>
    /// <param name="width">Columns to fill otherwise.</param>
    /// <returns>What to print, and whether the verdict is no.</returns>
    protected abstract (string Text, bool IsNo) Answer(TSubject subject, bool json, int width);

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var file = parsed.GetRequiredValue(_file);
        var text = CarFile.Read(file, _terminal);
        if (!text.Good)
        {
            return await RefuseAsync(text.Complaint);
        }

        var (subject, faults) = Read(text.Value, file);
        if (subject is null)
        {
            return await RefuseAsync($"{file} cannot be used:{Environment.NewLine}{FaultTable.Text(faults, _terminal.Width)}");
        }

        var asked = Asked(subject, parsed);
        if (!asked.Good)
        {
            return await RefuseAsync(asked.Complaint);
        }

        var (answer, isNo) = await Progress.ShowAsync(_terminal, Doing, _ => Answer(asked.Value, parsed.GetValue(_json), _terminal.Width), TimeProvider.System, cancellation);
        var given = _delivery.Give(parsed, answer, cancellation);
        return given == ExitCode.Done && isNo ? ExitCode.AnswerIsNo : given;
    }

    private async Task<int> RefuseAsync(string complaint)
    {
        await _terminal.Error.WriteLineAsync(complaint);
        return ExitCode.UnusableInput;
    }
}
