using System.Text;
using Tickover.Reports.Mixture;

namespace Tickover.Cli;

/// <summary>Where a command reads and writes: data on one stream, talk on the other.</summary>
internal sealed record Terminal
{
    /// <summary>Width used where the output is no terminal, so that files look the same everywhere.</summary>
    public const int DefaultWidth = 100;

    private const int NarrowestWidth = 60;

    /// <summary>Data.</summary>
    public required TextWriter Output { get; init; }

    /// <summary>Talk: complaints and progress.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Opens the standard input.</summary>
    public required Func<Stream> Input { get; init; }

    /// <summary>Columns to fill.</summary>
    public int Width { get; init; } = DefaultWidth;

    /// <summary>The colours the data may have: none unless it goes to a terminal that shows them, and nobody has said NO_COLOR.</summary>
    public TerminalColours Colours { get; init; }

    /// <summary>Whether progress can be overwritten in place.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>The streams of this process, always UTF-8, because a shell without a locale still has to print λ.</summary>
    /// <returns>The terminal.</returns>
    public static Terminal OfProcess()
    {
        if (OperatingSystem.IsWindows())
        {
            Console.OutputEncoding = Encoding.UTF8;
        }

        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        return new Terminal
        {
            Output = new StreamWriter(Console.OpenStandardOutput(), utf8),
            Error = new StreamWriter(Console.OpenStandardError(), utf8) { AutoFlush = true },
            Input = Console.OpenStandardInput,
            Width = Console.IsOutputRedirected ? DefaultWidth : WidthOfWindow(),
            Colours = ColoursFor(Console.IsOutputRedirected, Environment.GetEnvironmentVariable),
            ErrorIsTerminal = !Console.IsErrorRedirected,
        };
    }

    /// <summary>What colours to use (no-color.org: NO_COLOR counts when it is set and not empty; COLORTERM tells of 24-bit colour).</summary>
    /// <param name="redirected">Whether the output is no terminal.</param>
    /// <param name="variable">A variable of the environment by its name.</param>
    /// <returns>The colours.</returns>
    public static TerminalColours ColoursFor(bool redirected, Func<string, string?> variable)
    {
        if (redirected || !string.IsNullOrEmpty(variable("NO_COLOR")) || variable("TERM") is "dumb")
        {
            return TerminalColours.None;
        }

        return variable("COLORTERM") is "truecolor" or "24bit" ? TerminalColours.TrueColour : TerminalColours.Palette256;
    }

    /// <summary>Writes out what is still held back.</summary>
    public void Flush()
    {
        Output.Flush();
        Error.Flush();
    }

    private static int WidthOfWindow()
    {
        try
        {
            return Math.Max(NarrowestWidth, Console.WindowWidth);
        }
        catch (IOException)
        {
            // A pseudo terminal without a size; the default is as good as any.
            return DefaultWidth;
        }
    }
}
