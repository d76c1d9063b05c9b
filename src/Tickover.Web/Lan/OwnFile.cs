namespace Tickover.Web.Lan;

/// <summary>Files that are this server's alone: written whole or not at all, and readable by their owner only where the platform knows owners.</summary>
internal static class OwnFile
{
    private const UnixFileMode OwnerReadsAndWrites = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <summary>Makes a folder for such files.</summary>
    public static string Folder(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(path);
        }
        else
        {
            Directory.CreateDirectory(path, OwnerReadsAndWrites | UnixFileMode.UserExecute);
        }

        return path;
    }

    /// <summary>Writes a file beside the old one, onto the disk, and puts it in the old one's place.</summary>
    public static void Write(string path, ReadOnlySpan<byte> content)
    {
        var fresh = $"{path}.{Guid.NewGuid():N}.new";
        try
        {
            using (var stream = new FileStream(fresh, Options(FileMode.CreateNew)))
            {
                stream.Write(content);
                stream.Flush(flushToDisk: true);
            }

            File.Move(fresh, path, overwrite: true);
        }
        finally
        {
            File.Delete(fresh);
        }
    }

    /// <summary>Puts a file that cannot be read out of the way, under a name that says so.</summary>
    /// <returns>The name it has now.</returns>
    public static string PutAside(string path)
    {
        var aside = $"{path}.damaged-{Guid.NewGuid():N}"[..(path.Length + ".damaged-".Length + 8)];
        File.Move(path, aside);
        return Path.GetFileName(aside);
    }

    /// <summary>Waits for the right to change the files of a folder, against a second server on the same data.</summary>
    /// <exception cref="IOException">Another server has held it for two seconds.</exception>
    public static FileStream Lock(string path)
    {
        const int tries = 100;
        for (var i = 1; ; i++)
        {
            try
            {
                return new FileStream(path, Options(FileMode.OpenOrCreate));
            }
            catch (IOException) when (i < tries)
            {
                Thread.Sleep(20);
            }
        }
    }

    private static FileStreamOptions Options(FileMode mode)
    {
        var options = new FileStreamOptions { Mode = mode, Access = FileAccess.ReadWrite, Share = FileShare.None };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = OwnerReadsAndWrites;
        }

        return options;
    }
}
