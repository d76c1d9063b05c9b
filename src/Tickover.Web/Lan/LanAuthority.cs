using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;

namespace Tickover.Web.Lan;

/// <summary>The workshop's certificate authority and the server's certificate, made on first use and renewed without being asked.</summary>
internal sealed class LanAuthority : IDisposable
{
    // Enough that a server switched on once a month still renews in good time.
    private static readonly TimeSpan RenewBefore = TimeSpan.FromDays(60);
    private static readonly TimeSpan LookEvery = TimeSpan.FromMinutes(1);
    private readonly string _folder;
    private readonly IMachine _machine;
    private readonly TimeProvider _time;
    private readonly Lock _gate = new();
    private X509Certificate2? _authority;
    private X509Certificate2? _server;
    private long _looked;

    /// <summary>Names the folder; nothing is read or made yet.</summary>
    public LanAuthority(string folder, IMachine machine, TimeProvider time)
    {
        (_folder, _machine, _time) = (folder, machine, time);
    }

    /// <summary>What was wrong with the files, in words; null if nothing.</summary>
    public string? Trouble { get; private set; }

    /// <summary>The authority's certificate without its key, as a tablet takes it in (DER).</summary>
    public byte[] Certificate()
    {
        lock (_gate)
        {
            return Authority().RawData;
        }
    }

    /// <summary>SHA-256 of that certificate in pairs, to be compared by eye.</summary>
    public string Fingerprint() => string.Join(' ', Convert.ToHexString(SHA256.HashData(Certificate())).Chunk(4).Select(c => new string(c)));

    /// <summary>The server's certificate for a connection, renewed where its end is near or the machine is called otherwise.</summary>
    public X509Certificate2 ForConnection()
    {
        lock (_gate)
        {
            if (_server is null || _time.GetElapsedTime(_looked) > LookEvery)
            {
                _looked = _time.GetTimestamp();
                var (names, addresses) = Called();
                _server ??= Load("server");
                if (_server is null || !IsGood(_server, names, addresses))
                {
                    // The one before may still be in use by connections being made; the collector takes it.
                    _server = Keep("server", CertificateMaking.Server(Authority(), names, addresses, _time.GetUtcNow()));
                }
            }

            return _server;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _authority?.Dispose();
        _server?.Dispose();
    }

    private (IReadOnlyList<string> Names, IReadOnlyList<IPAddress> Addresses) Called()
    {
        var name = _machine.Name;
        IEnumerable<string> names = name is null ? [] : NameConstraints.Permits(Authority(), name) ? [name, $"{name}.local"] : [$"{name}.local"];
        return ([.. names], [.. _machine.Addresses.Select(a => a.Address).Where(PrivateNetworks.Hold)]);
    }

    private bool IsGood(X509Certificate2 server, IReadOnlyList<string> names, IReadOnlyList<IPAddress> addresses)
    {
        var now = _time.GetUtcNow().UtcDateTime;
        var alternatives = server.Extensions.OfType<X509SubjectAlternativeNameExtension>().Single();
        return now >= server.NotBefore.ToUniversalTime()
            && now < server.NotAfter.ToUniversalTime() - RenewBefore
            && server.IssuerName.RawData.AsSpan().SequenceEqual(Authority().SubjectName.RawData)
            && alternatives.EnumerateDnsNames().ToHashSet(StringComparer.Ordinal).SetEquals(names)
            && alternatives.EnumerateIPAddresses().ToHashSet().SetEquals(addresses);
    }

    private X509Certificate2 Authority()
    {
        _authority ??= Load("authority");
        if (_authority is null || _authority.NotAfter.ToUniversalTime() < _time.GetUtcNow().UtcDateTime + RenewBefore)
        {
            _authority = Keep("authority", CertificateMaking.Authority(_machine.Name, _time.GetUtcNow()));
        }

        return _authority;
    }

    private X509Certificate2? Load(string what)
    {
        var path = PathOf(what);
        if (!File.Exists(path))
        {
            return null;
        }

        try
        {
            return Usable(X509Certificate2.CreateFromPem(File.ReadAllText(path), File.ReadAllText(path)));
        }
        catch (Exception e) when (e is CryptographicException or ArgumentException)
        {
            Trouble = $"The {what}'s certificate could not be read and a new one was made. The old file is kept as {OwnFile.PutAside(path)}."
                + (what is "authority" ? " Every tablet has to be told to trust the new one." : "");
            return null;
        }
    }

    // Certificate and key in one file: they are never half renewed.
    private X509Certificate2 Keep(string what, X509Certificate2 made)
    {
        using var key = made.GetECDsaPrivateKey()!;
        OwnFile.Folder(_folder);
        OwnFile.Write(PathOf(what), Encoding.ASCII.GetBytes(made.ExportCertificatePem() + "\n" + key.ExportPkcs8PrivateKeyPem() + "\n"));
        return Usable(made);
    }

    // Windows does TLS only with a key that went through a key store.
    private static X509Certificate2 Usable(X509Certificate2 made)
    {
        if (!OperatingSystem.IsWindows())
        {
            return made;
        }

        using (made)
        {
            return X509CertificateLoader.LoadPkcs12(made.Export(X509ContentType.Pkcs12), password: null, X509KeyStorageFlags.Exportable);
        }
    }

    private string PathOf(string what) => Path.Combine(_folder, $"{what}.pem");
}
