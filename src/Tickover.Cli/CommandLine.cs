using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Tickover.Cli.Commands;
using Tickover.Cli.Output;
using Tickover.Workshop.Visits;

namespace Tickover.Cli;

/// <summary>Puts the commands together and runs one: the edge of the process, where nothing gets past as a stack trace.</summary>
internal static class CommandLine
{
    private const string Description =
        """
        Tickover: the mixture of a carburetted engine over speed and throttle, from the car's description.

        Exit codes: 0 done, 1 the answer is no, 2 unusable input, 3 internal fault, 130 stopped from the keyboard.
        """;

    /// <summary>All commands.</summary>
    /// <param name="terminal">Where they read and write.</param>
    /// <returns>The root.</returns>
    public static RootCommand Root(Terminal terminal)
    {
        var root = new RootCommand(Description);
        foreach (var command in Working(terminal).Concat(Keeping(terminal)))
        {
            root.Add(command);
        }

        foreach (var help in root.Options.OfType<HelpOption>())
        {
            help.Action = new ExampleHelp((HelpAction)help.Action!, terminal);
        }

        return root;
    }

    // What computes from documents, and the pages.
    private static Command[] Working(Terminal terminal) =>
    [
        new CheckCommand(terminal),
        new MixtureCommand(terminal),
        new ExplainCommand(terminal),
        new FitCommand(terminal),
        new LogCommand(terminal),
        new LinkageCommand(terminal),
        new SupplyCommand(terminal),
        new JetCommand(terminal),
        new LevelCommand(terminal),
        new WearCommand(terminal),
        new BuildCommand(terminal),
        new WallCommand(terminal),
        new LeakCommand(terminal),
        new TankCommand(terminal),
        new SenderCommand(terminal),
        new GaugeCommand(terminal),
        new FaultCommand(terminal),
        new JetsCommand(terminal),
        new NextCommand(terminal),
        new GasCommand(terminal),
        new BalanceCommand(terminal),
        new PracticeCommand(terminal),
        new ServeCommand(terminal),
        new DemoCommand(terminal),
        new SchemaCommand(terminal),
    ];

    // What works on a record.
    private static Command[] Keeping(Terminal terminal) =>
    [
        new RecordCommand(terminal),
        new BackupCommand(terminal),
        new RestoreCommand(terminal),
        new HandoverCommand(terminal),
        new ExportCommand(terminal),
        new ImportCommand(terminal),
    ];

    /// <summary>Runs one command line.</summary>
    /// <param name="args">The words after the program's name.</param>
    /// <param name="terminal">Where it reads and writes.</param>
    /// <param name="cancellation">Stops the work, as Ctrl-C does.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static async Task<int> RunAsync(IReadOnlyList<string> args, Terminal terminal, CancellationToken cancellation = default)
    {
        // No response files: a car's name may begin with @.
        var parsed = Root(terminal).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        var command = parsed.CommandResult.Command.Name;
        try
        {
            return parsed.Action is ParseErrorAction
                ? Refuse(parsed, terminal)
                : await parsed.InvokeAsync(Streams(terminal.Output, terminal.Error), cancellation);
        }
        catch (OperationCanceledException)
        {
            await terminal.Error.WriteLineAsync("Stopped. Nothing was written.");
            return ExitCode.Stopped;
        }
        catch (RecordTroubleException trouble)
        {
            await terminal.Error.WriteLineAsync(trouble.Message);
            return ExitCode.UnusableInput;
        }
#pragma warning disable CA1031 // The edge of the process: whatever happened is said in one sentence (house style 19).
        catch (Exception e)
#pragma warning restore CA1031
        {
            await terminal.Error.WriteLineAsync(
                $"Internal fault in '{command}': {e.GetType().Name}: {e.Message} Report it with the command and the car document.");
            return ExitCode.InternalFault;
        }
    }

    private static int Refuse(ParseResult parsed, Terminal terminal)
    {
        var action = (ParseErrorAction)parsed.Action!;
        action.ShowHelp = false;
        parsed.Invoke(Streams(terminal.Error, terminal.Error));
        var command = parsed.CommandResult.Command;
        terminal.Error.WriteLine($"See: tickover {(command is RootCommand ? string.Empty : command.Name + " ")}--help");
        return ExitCode.UnusableInput;
    }

    private static InvocationConfiguration Streams(TextWriter output, TextWriter error) => new()
    {
        Output = output,
        Error = error,
        EnableDefaultExceptionHandler = false,
    };
}
