using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;

namespace Tickover.Records.Carrying;

/// <summary>Writes entries one after another and notes the size and hash of each.</summary>
/// <param name="zip">The file being written.</param>
internal sealed class ZipEntries(ZipArchive zip)
{
    private readonly SortedDictionary<string, ExportEntry> _entries = new(StringComparer.Ordinal);

    /// <summary>What was written.</summary>
    public IReadOnlyDictionary<string, ExportEntry> Written => _entries;

    /// <summary>Writes a text as UTF-8.</summary>
    public Task TextAsync(string name, string text, CancellationToken cancellation) => BytesAsync(name, Encoding.UTF8.GetBytes(text), CompressionLevel.Optimal, cancellation);

    /// <summary>Writes a picture, which is compressed already.</summary>
    public Task PictureAsync(string name, byte[] picture, CancellationToken cancellation) => BytesAsync(name, picture, CompressionLevel.NoCompression, cancellation);

    private async Task BytesAsync(string name, byte[] bytes, CompressionLevel level, CancellationToken cancellation)
    {
        var entry = zip.CreateEntry(name, level);
        entry.LastWriteTime = Form.Moment;
        await using (var stream = await entry.OpenAsync(cancellation))
        {
            await stream.WriteAsync(bytes, cancellation);
        }

        _entries.Add(name, new ExportEntry(bytes.LongLength, Convert.ToHexStringLower(SHA256.HashData(bytes))));
    }
}
