using System.Security.Cryptography;

namespace Tickover.Web.Frame;

/// <summary>Style sheet, scripts, fonts and icon, embedded in the program and kept in memory.</summary>
/// <remarks>
/// All stand under one folder whose name is a hash of them all, so a browser keeps them for good and modules still
/// find each other by relative address. Nothing is read from the disk, so a build and a publish serve the same bytes.
/// </remarks>
public sealed class PageAssets
{
    private const string Prefix = "assets/";

    // Enough of SHA-256 that two releases do not share it, short enough for an address.
    private const int VersionLength = 12;

    private readonly Dictionary<string, PageAsset> _assets = new(StringComparer.Ordinal);

    /// <summary>Reads the embedded assets.</summary>
    public PageAssets()
    {
        var assembly = typeof(PageAssets).Assembly;
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var name in assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            using var stream = assembly.GetManifestResourceStream(name)!;
            var content = new byte[stream.Length];
            stream.ReadExactly(content);
            hash.AppendData(content);
            var path = name[Prefix.Length..].Replace('\\', '/');
            _assets[path] = new PageAsset(content, ContentType(path));
        }

        Version = Convert.ToHexStringLower(hash.GetHashAndReset())[..VersionLength];
    }

    /// <summary>Hash of all assets, a folder in their addresses.</summary>
    public string Version { get; }

    /// <summary>Paths of all assets.</summary>
    public IEnumerable<string> Paths => _assets.Keys;

    /// <summary>The address of an asset.</summary>
    /// <param name="path">Path such as <c>css/tickover.css</c>.</param>
    /// <returns>An address on this server.</returns>
    public string Url(string path) => $"/assets/{Version}/{path}";

    /// <summary>An asset by its path.</summary>
    /// <param name="path">Path such as <c>css/tickover.css</c>.</param>
    /// <returns>The asset, or null.</returns>
    public PageAsset? Find(string path) => _assets.GetValueOrDefault(path);

    private static string ContentType(string path) => Path.GetExtension(path) switch
    {
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".woff2" => "font/woff2",
        ".png" => "image/png",
        ".svg" => "image/svg+xml",
        _ => "text/plain; charset=utf-8",
    };
}
