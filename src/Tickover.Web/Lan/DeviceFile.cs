using System.Text.Json;

namespace Tickover.Web.Lan;

/// <summary>The paired tablets on disk, shared by every server on the same data.</summary>
internal sealed class DeviceFile
{
    private const int Form = 1;
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web) { WriteIndented = true };
    private readonly string _path;
    private (DateTime Written, long Length)? _stamp;
    private IReadOnlyList<PairedDevice> _devices = [];

    /// <summary>Names the file; nothing is read yet.</summary>
    public DeviceFile(string folder)
    {
        _path = Path.Combine(OwnFile.Folder(folder), "devices.json");
    }

    /// <summary>What was wrong with the file, in words; null if nothing.</summary>
    public string? Trouble { get; private set; }

    /// <summary>The devices as they stand, read again where another server wrote.</summary>
    public IReadOnlyList<PairedDevice> Read()
    {
        var file = new FileInfo(_path);
        (DateTime, long)? stamp = file.Exists ? (file.LastWriteTimeUtc, file.Length) : null;
        if (stamp != _stamp)
        {
            _devices = stamp is null ? [] : Load();
            _stamp = stamp;
        }

        return _devices;
    }

    /// <summary>Changes the list, on the disk first.</summary>
    /// <exception cref="IOException">The disk does not take it; the list is as it was.</exception>
    public void Change(Func<IReadOnlyList<PairedDevice>, IReadOnlyList<PairedDevice>> change)
    {
        using var gate = OwnFile.Lock(_path + ".lock");
        var changed = change(Read());
        OwnFile.Write(_path, JsonSerializer.SerializeToUtf8Bytes(new Content(Form, changed), Json));
        _devices = changed;
        var file = new FileInfo(_path);
        _stamp = (file.LastWriteTimeUtc, file.Length);
    }

    // A file that cannot be read lets nobody in: whoever was on it pairs again. It is kept, for whoever wants to look.
    private IReadOnlyList<PairedDevice> Load()
    {
        try
        {
            var content = JsonSerializer.Deserialize<Content>(File.ReadAllBytes(_path), Json);
            if (content is { Form: Form, Devices: { } devices } && devices.All(IsWhole))
            {
                return devices;
            }
        }
        catch (JsonException)
        {
            // Told below, with every other way of being unreadable.
        }

        Trouble = $"The list of paired tablets could not be read, so no tablet is let in: pair them again. The old list is kept as {OwnFile.PutAside(_path)}.";
        return [];
    }

    private static bool IsWhole(PairedDevice? device) => device is { Id.Length: > 0, Name.Length: > 0, TokenHash.Length: > 0 };

    private sealed record Content(int Form, IReadOnlyList<PairedDevice>? Devices);
}
