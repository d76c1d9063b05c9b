using System.Security.Cryptography;
using System.Text;
using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Demonstration;

/// <summary>Identifiers made from names, so that the demonstration is the same wherever and whenever it is loaded.</summary>
internal static class Named
{
    public static Id<T> Of<T>(string name) => new(Number($"{typeof(T).Name}/{name}"));

    public static Guid Number(string name)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(Encoding.UTF8.GetBytes($"tickover demonstration/{name}"), hash);
        var number = hash[..16];

        // RFC 9562, section 5.8: version 8 is for numbers made in one's own way.
        number[6] = (byte)((number[6] & 0x0F) | 0x80);
        number[8] = (byte)((number[8] & 0x3F) | 0x80);
        return new Guid(number, bigEndian: true);
    }
}
