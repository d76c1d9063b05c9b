using System.CommandLine;
using Tickover.Cli.Input;

namespace Tickover.Cli.Commands;

/// <summary>A command on the workshop's record. Its troubles are told as they are and end with "unusable input".</summary>
internal abstract class RecordedCommand : ExampledCommand
{
    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it talks.</param>
    /// <param name="name">The word typed.</param>
    /// <param name="description">What it does, one sentence.</param>
    /// <param name="examples">Whole command lines.</param>
    protected RecordedCommand(Terminal terminal, string name, string description, params string[] examples)
        : base(name, description, examples)
    {
        Terminal = terminal;
        Source.AddTo(this);
        SetAction(RunAsync);
    }

    /// <summary>Where it talks.</summary>
    protected Terminal Terminal { get; }

    /// <summary>Which record.</summary>
    protected RecordSource Source { get; } = new();

    /// <summary>Does the work.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>The exit code.</returns>
    protected abstract Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation);

    /// <summary>Says a sentence on the data stream.</summary>
    /// <param name="sentence">The sentence.</param>
    protected Task SayAsync(string sentence) => Terminal.Output.WriteLineAsync(sentence);
}
