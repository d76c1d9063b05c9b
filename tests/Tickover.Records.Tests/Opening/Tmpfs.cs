using System.Diagnostics;

namespace Tickover.Records.Tests.Opening;

/// <summary>A small file system of its own, for a disk that is full or may not be written. Needs the right to mount.</summary>
internal sealed class Tmpfs : IDisposable
{
    private Tmpfs(string path) => Path = path;

    public string Path { get; }

    /// <summary>Mounts one, or skips the test where that is not allowed.</summary>
    public static Tmpfs Mount(string size)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Small file systems are mounted on Linux only.");
        var path = Directory.CreateTempSubdirectory("tickover-disk-").FullName;
        Assert.SkipUnless(Run("mount", "-t", "tmpfs", "-o", $"size={size}", "tmpfs", path), "This account may not mount a small file system.");
        return new Tmpfs(path);
    }

    public void MakeReadOnly() => Assert.True(Run("mount", "-o", "remount,ro", Path));

    public void Grow(string size) => Assert.True(Run("mount", "-o", $"remount,size={size}", Path));

    public void Dispose()
    {
        Run("umount", "-l", Path);
        Directory.Delete(Path);
    }

    private static bool Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { UseShellExecute = false, RedirectStandardError = true })!;
        process.WaitForExit();
        return process.ExitCode == 0;
    }
}
