using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Tickover.Web.Lan;

/// <summary>Makes the two certificates: the house's authority and, signed by it, the server's.</summary>
/// <remarks>Profiles after IETF RFC 5280: P-256 keys, the authority for one step only, the server for TLS only.</remarks>
internal static class CertificateMaking
{
    /// <summary>Life of an authority: as long as a workshop keeps its machine.</summary>
    public static readonly TimeSpan AuthorityLife = TimeSpan.FromDays(3650);

    /// <summary>Life of a server's certificate; the browsers' own limit is 398 days.</summary>
    public static readonly TimeSpan ServerLife = TimeSpan.FromDays(365);

    // A tablet whose clock is a little behind should not turn a new certificate away.
    private static readonly TimeSpan EarlyBy = TimeSpan.FromDays(1);
    private const int SerialBytes = 16;
    private const byte PositiveMask = 0x7F;
    private const string ServerUse = "1.3.6.1.5.5.7.3.1";

    /// <summary>A new authority with its key.</summary>
    public static X509Certificate2 Authority(string? machine, DateTimeOffset now)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest(Subject($"Tickover authority of {machine ?? "this workshop"}, {now:yyyy-MM-dd}"), key, HashAlgorithmName.SHA256);
        request.CertificateExtensions.Add(X509BasicConstraintsExtension.CreateForCertificateAuthority(pathLengthConstraint: 0));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.KeyCertSign, critical: true));
        request.CertificateExtensions.Add(NameConstraints.For(machine));
        request.CertificateExtensions.Add(new X509SubjectKeyIdentifierExtension(request.PublicKey, critical: false));
        return request.CreateSelfSigned(now - EarlyBy, now + AuthorityLife);
    }

    /// <summary>A new server's certificate with its key.</summary>
    /// <param name="authority">With its key.</param>
    /// <param name="names">Host names it is good for.</param>
    /// <param name="addresses">Addresses it is good for.</param>
    /// <param name="now">Start of its life.</param>
    public static X509Certificate2 Server(X509Certificate2 authority, IReadOnlyList<string> names, IReadOnlyList<IPAddress> addresses, DateTimeOffset now)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest(Subject("Tickover"), key, HashAlgorithmName.SHA256);
        var alternatives = new SubjectAlternativeNameBuilder();
        foreach (var name in names)
        {
            alternatives.AddDnsName(name);
        }

        foreach (var address in addresses)
        {
            alternatives.AddIpAddress(address);
        }

        request.CertificateExtensions.Add(X509BasicConstraintsExtension.CreateForEndEntity(critical: true));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature, critical: true));
        request.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new Oid(ServerUse)], critical: false));
        request.CertificateExtensions.Add(alternatives.Build());
        request.CertificateExtensions.Add(new X509SubjectKeyIdentifierExtension(request.PublicKey, critical: false));
        request.CertificateExtensions.Add(X509AuthorityKeyIdentifierExtension.CreateFromCertificate(authority, includeKeyIdentifier: true, includeIssuerAndSerial: false));
        var end = Min(now + ServerLife, new DateTimeOffset(authority.NotAfter));
        using var bare = request.Create(authority, now - EarlyBy, end, Serial());
        return bare.CopyWithPrivateKey(key);
    }

    private static X500DistinguishedName Subject(string name)
    {
        var builder = new X500DistinguishedNameBuilder();
        builder.AddCommonName(name);
        return builder.Build();
    }

    private static byte[] Serial()
    {
        var serial = RandomNumberGenerator.GetBytes(SerialBytes);
        serial[0] = (byte)((serial[0] & PositiveMask) | 1);
        return serial;
    }

    private static DateTimeOffset Min(DateTimeOffset one, DateTimeOffset other) => one < other ? one : other;
}
