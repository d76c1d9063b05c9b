using System.Text;

namespace Tickover.Cli.Input;

/// <summary>Reads the text of a car document from a file or the standard input.</summary>
internal static class CarFile
{
    /// <summary>The name that stands for the standard input.</summary>
    public const string StandardInput = "-";

    /// <summary>The largest document read. One with every figure of eight barrels written out has some 40 kB.</summary>
    public const int LargestBytes = 1 << 20;

    /// <summary>Reads the text.</summary>
    /// <param name="path">The file, or "-".</param>
    /// <param name="terminal">Gives the standard input.</param>
    /// <returns>The text, or why there is none.</returns>
    public static Answer<string> Read(string path, Terminal terminal)
    {
        if (string.Equals(path, StandardInput, StringComparison.Ordinal))
        {
            using var input = terminal.Input();
            return Text(input, "the standard input");
        }

        if (Directory.Exists(path))
        {
            return Answer<string>.No($"'{path}' is a folder. Name one car document, such as samples/tern-2800.car.json.");
        }

        try
        {
            using var file = File.OpenRead(path);
            return Text(file, $"'{path}'");
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return Answer<string>.No($"There is no file '{path}'. Check the name and the folder you are in.");
        }
        catch (UnauthorizedAccessException)
        {
            return Answer<string>.No($"'{path}' may not be read by you. Change its permissions or copy it.");
        }
        catch (Exception e) when (e is IOException or ArgumentException or NotSupportedException)
        {
            return Answer<string>.No($"'{path}' cannot be read: {e.Message}");
        }
    }

    private static Answer<string> Text(Stream stream, string name)
    {
        var buffer = new byte[LargestBytes + 1];
        var length = stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
        if (length > LargestBytes)
        {
            return Answer<string>.No($"{Capital(name)} has more than 1 MB, too much for a car document. Check that it is the right file.");
        }

        try
        {
            var strict = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
            var text = strict.GetString(buffer, 0, length).TrimStart('\uFEFF');
            return string.IsNullOrWhiteSpace(text)
                ? Answer<string>.No($"{Capital(name)} is empty. A car document is JSON; 'tickover schema' prints its form.")
                : text;
        }
        catch (DecoderFallbackException)
        {
            return Answer<string>.No($"{Capital(name)} is not text in UTF-8. Save the document as UTF-8.");
        }
    }

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];
}
