using System.Formats.Asn1;
using System.Net;
using System.Security.Cryptography.X509Certificates;

namespace Tickover.Web.Lan;

/// <summary>The extension that binds an authority to names of this house (IETF RFC 5280, section 4.2.1.10).</summary>
/// <remarks>Whoever stole the authority's key could still not pose as anything on the internet to a tablet that trusts it.</remarks>
internal static class NameConstraints
{
    /// <summary>Its object identifier.</summary>
    public const string Oid = "2.5.29.30";

    private static readonly Asn1Tag Permitted = new(TagClass.ContextSpecific, 0, isConstructed: true);
    private static readonly Asn1Tag DnsName = new(TagClass.ContextSpecific, 2);
    private static readonly Asn1Tag IpAddress = new(TagClass.ContextSpecific, 7);

    /// <summary>The extension that permits ".local", a machine's bare name and private addresses, and nothing else.</summary>
    public static X509Extension For(string? machine)
    {
        var writer = new AsnWriter(AsnEncodingRules.DER);
        using (writer.PushSequence())
        using (writer.PushSequence(Permitted))
        {
            foreach (var name in new[] { "local", machine }.OfType<string>())
            {
                using (writer.PushSequence())
                {
                    writer.WriteCharacterString(UniversalTagNumber.IA5String, name, DnsName);
                }
            }

            foreach (var network in PrivateNetworks.All)
            {
                using (writer.PushSequence())
                {
                    writer.WriteOctetString([.. network.BaseAddress.GetAddressBytes(), .. Mask(network)], IpAddress);
                }
            }
        }

        return new X509Extension(Oid, writer.Encode(), critical: true);
    }

    /// <summary>Whether an authority was made for a machine of this name.</summary>
    public static bool Permits(X509Certificate2 authority, string machine) =>
        authority.Extensions[Oid] is { } extension && extension.RawData.AsSpan().SequenceEqual(For(machine).RawData);

    private static byte[] Mask(IPNetwork network)
    {
        const int bitsOfByte = 8;
        var mask = new byte[network.BaseAddress.GetAddressBytes().Length];
        for (var i = 0; i < mask.Length; i++)
        {
            var bits = Math.Clamp(network.PrefixLength - (i * bitsOfByte), 0, bitsOfByte);
            mask[i] = unchecked((byte)(byte.MaxValue << (bitsOfByte - bits)));
        }

        return mask;
    }
}
