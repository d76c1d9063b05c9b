using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Tickover.Cli.Commands;

namespace Tickover.Cli.Output;

/// <summary>The help of a command, with its examples beneath; every example runs on the samples and a test runs it.</summary>
internal sealed class ExampleHelp : SynchronousCommandLineAction
{
    private readonly HelpAction _help;

    /// <summary>Wraps the usual help.</summary>
    /// <param name="help">The usual help.</param>
    /// <param name="terminal">Gives the width.</param>
    public ExampleHelp(HelpAction help, Terminal terminal)
    {
        _help = help;
        _help.MaxWidth = terminal.Width;
    }

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        _help.Invoke(parseResult);
        var output = parseResult.InvocationConfiguration.Output;
        var commands = parseResult.CommandResult.Command is ExampledCommand one
            ? [one]
            : parseResult.CommandResult.Command.Subcommands.OfType<ExampledCommand>();
        output.WriteLine("Examples:");
        foreach (var example in commands.SelectMany(c => c.Examples))
        {
            output.WriteLine($"  {example}");
        }

        output.WriteLine();
        return ExitCode.Done;
    }
}
