namespace Tickover.Cli;

/// <summary>The process: its streams, one command line, its exit code.</summary>
internal static class Program
{
    /// <summary>Runs the command line.</summary>
    /// <param name="args">The words after the program's name.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static async Task<int> Main(string[] args)
    {
        var terminal = Terminal.OfProcess();
        var code = await CommandLine.RunAsync(args, terminal);
        terminal.Flush();
        return code;
    }
}
