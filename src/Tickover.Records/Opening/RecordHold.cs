using Tickover.Workshop.Visits;

namespace Tickover.Records.Opening;

/// <summary>Says for as long as it is held that a program has the record of a folder open, so that nobody exchanges the file under it.</summary>
/// <remarks>Any number of programs share it; only replacing the record needs it alone. A killed program lets go by dying.</remarks>
internal sealed class RecordHold : IDisposable
{
    private const string Name = "in-use";
    private readonly FileStream _file;

    private RecordHold(FileStream file) => _file = file;

    /// <summary>Says that the record is open here.</summary>
    /// <exception cref="RecordTroubleException">The record is just being replaced.</exception>
    public static RecordHold Share(RecordPlace place) => Take(
        place, FileAccess.Read, FileShare.Read, $"The record in {place.DataFolder} is just being replaced. Wait until that is done and start again.");

    /// <summary>Makes sure that nobody has the record open.</summary>
    /// <exception cref="RecordTroubleException">Somebody has.</exception>
    public static RecordHold Alone(RecordPlace place) => Take(
        place, FileAccess.ReadWrite, FileShare.None, $"The record in {place.DataFolder} is open in a running Tickover. Stop that one first; nothing was changed.");

    /// <inheritdoc/>
    public void Dispose() => _file.Dispose();

    private static RecordHold Take(RecordPlace place, FileAccess access, FileShare share, string taken)
    {
        var folder = Directory.CreateDirectory(Path.Combine(place.DataFolder, RecordNote.Folder));
        try
        {
            return new RecordHold(new FileStream(Path.Combine(folder.FullName, Name), FileMode.OpenOrCreate, access, share));
        }
        catch (IOException fault) when (!Trouble.IsFull(fault))
        {
            throw new RecordTroubleException(taken, fault);
        }
    }
}
