using Tickover.Workshop.Visits;

namespace Tickover.Records.Opening;

/// <summary>Lets one program at a time begin, upgrade or replace the record of a folder. A killed program lets go by dying.</summary>
internal sealed class FolderLock : IAsyncDisposable
{
    private readonly FileStream _file;

    private FolderLock(FileStream file) => _file = file;

    /// <summary>Takes the lock.</summary>
    /// <exception cref="RecordTroubleException">Another program has it.</exception>
    public static FolderLock Take(RecordPlace place)
    {
        var folder = Directory.CreateDirectory(Path.Combine(place.DataFolder, RecordNote.Folder));
        try
        {
            return new FolderLock(new FileStream(Path.Combine(folder.FullName, "lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
        }
        catch (IOException fault)
        {
            throw new RecordTroubleException($"Another Tickover is just opening or replacing the record in {place.DataFolder}. Wait for it, or stop it.", fault);
        }
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _file.DisposeAsync();
}
