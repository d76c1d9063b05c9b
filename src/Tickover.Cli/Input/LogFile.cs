using Tickover.Instruments.Logs;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Logs;

namespace Tickover.Cli.Input;

/// <summary>Reads a road log from a file or the standard input down to its points.</summary>
internal static class LogFile
{
    /// <summary>Reads it.</summary>
    /// <param name="path">The file, or "-".</param>
    /// <param name="car">The car as it was when the log was taken.</param>
    /// <param name="terminal">Gives the standard input.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The points with how they came about, or why there are none.</returns>
    public static Answer<LogTold> Read(string path, Car car, Terminal terminal, CancellationToken cancellation)
    {
        try
        {
            using var stream = path is CarFile.StandardInput ? terminal.Input() : File.OpenRead(path);
            var told = new LogBook().Read(stream, Path.GetFileName(path), car, new LogHints(), cancellation);
            return told.Refusals.Count > 0 ? Answer<LogTold>.No($"{path}: {string.Join(" ", told.Refusals)}") : told;
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return Answer<LogTold>.No($"There is no file '{path}'. Check the name and the folder you are in.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Answer<LogTold>.No($"'{path}' cannot be read: {e.Message}");
        }
    }
}
