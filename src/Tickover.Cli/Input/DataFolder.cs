namespace Tickover.Cli.Input;

/// <summary>The folder that holds the cars.</summary>
internal static class DataFolder
{
    /// <summary>Makes the folder if it is not there.</summary>
    /// <param name="path">The folder.</param>
    /// <returns>Null, or why it cannot be used.</returns>
    public static string? Make(string path)
    {
        try
        {
            Directory.CreateDirectory(path);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return $"--data {path}: the folder cannot be made: {e.Message}";
        }
    }
}
