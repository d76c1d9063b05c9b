using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;

namespace Tickover.Records.Tests.Carrying;

/// <summary>Looks into exports and changes them as somebody might who means no good.</summary>
internal static class Zips
{
    public static string NewFile => Path.Combine(Scratch.NewFolder(), "export.zip");

    public static SortedDictionary<string, byte[]> Entries(string path)
    {
        using var zip = ZipFile.OpenRead(path);
        var entries = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        foreach (var entry in zip.Entries)
        {
            using var stream = entry.Open();
            using var memory = new MemoryStream();
            stream.CopyTo(memory);
            entries.Add(entry.FullName, memory.ToArray());
        }

        return entries;
    }

    public static string Text(string path, string entry) => Encoding.UTF8.GetString(Entries(path)[entry]);

    public static string Write(IEnumerable<KeyValuePair<string, byte[]>> entries)
    {
        var path = NewFile;
        using var zip = ZipFile.Open(path, ZipArchiveMode.Create);
        foreach (var (name, bytes) in entries)
        {
            using var stream = zip.CreateEntry(name).Open();
            stream.Write(bytes);
        }

        return path;
    }

    /// <summary>The export with something changed; the manifest is made to agree unless that is the point.</summary>
    public static string Changed(string path, Action<SortedDictionary<string, byte[]>> change, bool withHashes = true)
    {
        var entries = Entries(path);
        change(entries);
        if (withHashes)
        {
            var manifest = JsonNode.Parse(entries["manifest.json"])!;
            var list = new JsonObject();
            foreach (var (name, bytes) in entries.Where(e => !string.Equals(e.Key, "manifest.json", StringComparison.Ordinal)))
            {
                list[name] = new JsonObject { ["bytes"] = bytes.LongLength, ["sha256"] = Convert.ToHexStringLower(SHA256.HashData(bytes)) };
            }

            manifest["entries"] = list;
            entries["manifest.json"] = Encoding.UTF8.GetBytes(manifest.ToJsonString());
        }

        return Write(entries);
    }

    public static void Replace(SortedDictionary<string, byte[]> entries, string name, string old, string fresh)
    {
        var text = Encoding.UTF8.GetString(entries[name]);
        Assert.Contains(old, text, StringComparison.Ordinal);
        entries[name] = Encoding.UTF8.GetBytes(text.Replace(old, fresh, StringComparison.Ordinal));
    }
}
