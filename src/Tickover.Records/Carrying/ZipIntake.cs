using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;
using System.Text.RegularExpressions;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Carrying;

/// <summary>Reads an export that may come from anybody: every name, size and hash is looked at, and nothing is ever written to the disk by its name.</summary>
internal sealed partial class ZipIntake
{
    private const int OneSecond = 1000;
    private static readonly HashSet<string> Known = new(RecordKinds.All.SelectMany(k => new[] { Form.Items(k), Form.Table(k) }).Append(Form.Journal).Append(Form.ReadMe), StringComparer.Ordinal);

    private readonly Dictionary<string, ZipArchiveEntry> _entries = new(StringComparer.Ordinal);
    private readonly string _path;

    private ZipIntake(string path) => _path = path;

    /// <summary>What the export says of itself.</summary>
    public ExportManifest Manifest { get; private set; } = null!;

    /// <summary>Numbers of the photographs whose pictures are in it.</summary>
    public IEnumerable<Guid> Pictures => _entries.Keys.Where(n => Picture().IsMatch(n)).Order(StringComparer.Ordinal).Select(n => Guid.ParseExact(n[9..41], "N"));

    /// <summary>Reads the list of entries and the manifest, and makes sure that they agree.</summary>
    /// <exception cref="RecordTroubleException">They do not.</exception>
    public static async Task<ZipIntake> OpenAsync(ZipArchive zip, string path, CancellationToken cancellation)
    {
        var intake = new ZipIntake(path);
        if (zip.Entries.Count > Form.MostEntries)
        {
            throw intake.Trouble($"it has {zip.Entries.Count} entries, more than any record");
        }

        foreach (var entry in zip.Entries)
        {
            if (!intake._entries.TryAdd(entry.FullName, entry))
            {
                throw intake.Trouble($"\"{Shown(entry.FullName)}\" is in it twice");
            }
        }

        intake.Manifest = await intake.ReadManifestAsync(cancellation);
        intake.Compare();
        return intake;
    }

    /// <summary>Reads an entry whole and compares it with its hash.</summary>
    public async Task<byte[]> ReadAsync(string name, CancellationToken cancellation)
    {
        var expected = Manifest.Entries[name];
        var bytes = await ReadBoundedAsync(_entries[name], expected.Bytes, cancellation);
        return bytes is not null && string.Equals(Convert.ToHexStringLower(SHA256.HashData(bytes)), expected.Sha256, StringComparison.Ordinal)
            ? bytes
            : throw Trouble($"\"{name}\" is not what was exported, or was changed since");
    }

    /// <summary>Makes sure of the entries that are for people only.</summary>
    public async Task CheckRestAsync(CancellationToken cancellation)
    {
        foreach (var name in _entries.Keys.Where(n => !n.StartsWith("items/", StringComparison.Ordinal) && !n.StartsWith("pictures/", StringComparison.Ordinal) && n is not (Form.Manifest or Form.Journal)))
        {
            await ReadAsync(name, cancellation);
        }
    }

    /// <summary>A complaint about this export.</summary>
    public RecordTroubleException Trouble(string what, Exception? fault = null)
    {
        var words = $"{_path} cannot be taken in: {what}. Nothing was changed; export it again where it came from.";
        return fault is null ? new RecordTroubleException(words) : new RecordTroubleException(words, fault);
    }

    // Never more than said, whatever the packed bytes would grow to.
    private static async Task<byte[]?> ReadBoundedAsync(ZipArchiveEntry entry, long bytes, CancellationToken cancellation)
    {
        if (entry.Length != bytes)
        {
            return null;
        }

        var whole = new MemoryStream();
        var buffer = new byte[81920];
        await using var stream = await entry.OpenAsync(cancellation);
        int read;
        while ((read = await stream.ReadAsync(buffer, cancellation)) > 0)
        {
            if (whole.Length + read > bytes)
            {
                return null;
            }

            whole.Write(buffer, 0, read);
        }

        return whole.Length == bytes ? whole.ToArray() : null;
    }

    private static string Shown(string name) => new([.. name.Take(80).Select(c => char.IsControl(c) ? '?' : c)]);

    [GeneratedRegex("^pictures/[0-9a-f]{32}\\.jpg$", RegexOptions.ExplicitCapture, OneSecond)]
    private static partial Regex Picture();

    [GeneratedRegex("^schemas/record-[A-Za-z]{1,40}\\.schema\\.json$", RegexOptions.ExplicitCapture, OneSecond)]
    private static partial Regex Schema();

    private async Task<ExportManifest> ReadManifestAsync(CancellationToken cancellation)
    {
        if (!_entries.TryGetValue(Form.Manifest, out var entry))
        {
            throw Trouble("it is no export of a record (there is no manifest.json in it)");
        }

        if (entry.Length > Form.LargestManifest)
        {
            throw Trouble("its manifest is larger than that of any record");
        }

        var bytes = await ReadBoundedAsync(entry, entry.Length, cancellation) ?? throw Trouble("its manifest is not as long as the zip says");
        try
        {
            using var document = JsonDocument.Parse(bytes);
            if (document.RootElement.ValueKind != JsonValueKind.Object || !document.RootElement.TryGetProperty("format", out var format) || !format.ValueEquals(Form.Name))
            {
                throw Trouble("it is no export of a record (its manifest is of something else)");
            }

            return document.RootElement.TryGetProperty("version", out var version) && version.TryGetInt32(out var number) && number > Form.Version
                ? throw new RecordTroubleException($"{_path} was written by a newer Tickover (form {number}; this one knows {Form.Version}). Nothing was changed; install the newer version.")
                : document.RootElement.Deserialize<ExportManifest>(Form.Json) is { Entries: not null, Counts: not null } manifest && !manifest.Entries.Any(e => e.Value is null)
                ? manifest
                : throw Trouble("its manifest is not complete");
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException)
        {
            throw Trouble("its manifest cannot be read", fault);
        }
    }

    private void Compare()
    {
        foreach (var name in _entries.Keys.Where(n => !string.Equals(n, Form.Manifest, StringComparison.Ordinal)))
        {
            if (!Known.Contains(name) && !Picture().IsMatch(name) && !Schema().IsMatch(name))
            {
                throw Trouble($"\"{Shown(name)}\" is no part of an export");
            }

            if (!Manifest.Entries.ContainsKey(name))
            {
                throw Trouble($"\"{Shown(name)}\" was put in afterwards");
            }
        }

        foreach (var (name, entry) in Manifest.Entries)
        {
            if (!_entries.ContainsKey(name))
            {
                throw Trouble($"\"{Shown(name)}\" is missing in it");
            }

            var most = Picture().IsMatch(name) ? Form.LargestPicture : Form.LargestList;
            if (entry.Bytes < 0 || entry.Bytes > most)
            {
                throw Trouble($"\"{Shown(name)}\" says that it is {entry.Bytes} bytes long, more than {most}");
            }
        }

        if (Known.FirstOrDefault(n => !_entries.ContainsKey(n)) is { } missing)
        {
            throw Trouble($"\"{missing}\" is missing in it");
        }
    }
}
