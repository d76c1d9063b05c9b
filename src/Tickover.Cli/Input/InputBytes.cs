namespace Tickover.Cli.Input;

/// <summary>Reads a file or the standard input whole, up to a size.</summary>
internal static class InputBytes
{
    /// <summary>Reads the bytes.</summary>
    /// <param name="path">The file, or "-".</param>
    /// <param name="terminal">Gives the standard input.</param>
    /// <param name="largest">Most bytes to read.</param>
    /// <param name="what">What it should be, such as "a car document".</param>
    /// <param name="nameOne">What to do when a folder was named.</param>
    /// <returns>The bytes, or why there are none.</returns>
    public static Answer<byte[]> Read(string path, Terminal terminal, int largest, string what, string nameOne)
    {
        if (path is CarFile.StandardInput)
        {
            using var input = terminal.Input();
            return Whole(input, "The standard input", largest, what);
        }

        if (Directory.Exists(path))
        {
            return Answer<byte[]>.No($"'{path}' is a folder. {nameOne}");
        }

        try
        {
            using var file = File.OpenRead(path);
            return Whole(file, $"'{path}'", largest, what);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return Answer<byte[]>.No($"There is no file '{path}'. Check the name and the folder you are in.");
        }
        catch (UnauthorizedAccessException)
        {
            return Answer<byte[]>.No($"'{path}' may not be read by you. Change its permissions or copy it.");
        }
        catch (Exception e) when (e is IOException or ArgumentException or NotSupportedException)
        {
            return Answer<byte[]>.No($"'{path}' cannot be read: {e.Message}");
        }
    }

    private static Answer<byte[]> Whole(Stream stream, string name, int largest, string what)
    {
        using var held = new MemoryStream();
        var buffer = new byte[1 << 16];
        int got;
        while ((got = stream.Read(buffer)) > 0)
        {
            if (held.Length + got > largest)
            {
                return Answer<byte[]>.No($"{name} has more than {largest >> 20} MB, too much for {what}. Check that it is the right file, or cut it in parts.");
            }

            held.Write(buffer, 0, got);
        }

        return held.ToArray();
    }
}
