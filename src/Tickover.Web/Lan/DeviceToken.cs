using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace Tickover.Web.Lan;

/// <summary>The secret in a tablet's cookie.</summary>
internal static class DeviceToken
{
    private const int Bytes = 32;

    /// <summary>A new one: 256 bits from the system's generator.</summary>
    public static string Make() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(Bytes));

    /// <summary>What is kept of it.</summary>
    public static string Hash(string token) => Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(token)));

    /// <summary>Whether two hashes are one, in a time that does not tell how far they agree.</summary>
    public static bool Same(string? one, string? other) =>
        one is not null && other is not null && CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(one), Encoding.ASCII.GetBytes(other));
}
