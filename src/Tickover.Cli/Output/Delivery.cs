using System.CommandLine;
using System.Text;
using Tickover.Reports.Mixture;

namespace Tickover.Cli.Output;

/// <summary>Hands over what a command made: on the standard output, or in a file that is there whole or not at all.</summary>
/// <param name="terminal">Where data and complaints go.</param>
internal sealed class Delivery(Terminal terminal)
{
    private readonly Option<string?> _file = new("--output", "-o")
    {
        Description = "Write to this file instead of the standard output; it appears whole or not at all.",
        HelpName = "FILE",
    };

    /// <summary>Adds the option to a command.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command) => command.Add(_file);

    /// <summary>Whether a file is asked for.</summary>
    /// <param name="parsed">The command line.</param>
    /// <returns>True with -o.</returns>
    public bool IsFile(ParseResult parsed) => parsed.GetValue(_file) is not null;

    /// <summary>The colours the data may have: a file is read later and elsewhere, whatever this terminal shows.</summary>
    /// <param name="parsed">The command line.</param>
    /// <returns>The colours.</returns>
    public TerminalColours Colours(ParseResult parsed) => parsed.GetValue(_file) is null ? terminal.Colours : TerminalColours.None;

    /// <summary>Hands the text over.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="text">The text.</param>
    /// <param name="cancellation">Last chance to leave the file as it was.</param>
    /// <returns>The exit code.</returns>
    public int Give(ParseResult parsed, string text, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        if (parsed.GetValue(_file) is not { } path)
        {
            terminal.Output.Write(text);
            terminal.Output.Flush();
            return ExitCode.Done;
        }

        return Give(path, text);
    }

    /// <summary>Writes a file that is there whole or not at all, and says so.</summary>
    /// <param name="path">The file.</param>
    /// <param name="text">The text.</param>
    /// <returns>The exit code.</returns>
    public int Give(string path, string text)
    {
        if (Beside(path, text) is not { } complaint)
        {
            return ExitCode.Done;
        }

        terminal.Error.WriteLine(complaint);
        return ExitCode.UnusableInput;
    }

    /// <summary>Writes a file beside what is printed.</summary>
    /// <param name="path">Where.</param>
    /// <param name="text">What.</param>
    /// <returns>Null, or why it could not be written.</returns>
    public string? Beside(string path, string text)
    {
        var complaint = Directory.Exists(path) ? $"'{path}' is a folder. Name a file in it." : Write(path, text);
        if (complaint is null)
        {
            terminal.Error.WriteLine($"Written to {path}.");
        }

        return complaint;
    }

    private static string? Write(string path, string text)
    {
        // Beside the target: a rename is whole only within one file system.
        var part = $"{path}.{Guid.NewGuid():N}.part";
        try
        {
            File.WriteAllText(part, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            File.Move(part, path, overwrite: true);
            return null;
        }
        catch (DirectoryNotFoundException)
        {
            return $"The folder of '{path}' does not exist. Make it first.";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return $"'{path}' cannot be written: {e.Message}";
        }
        finally
        {
            if (File.Exists(part))
            {
                File.Delete(part);
            }
        }
    }
}
