using System.Security.Cryptography;

namespace Tickover.Web.Lan;

/// <summary>How a pairing code is written and read.</summary>
internal static class PairingCode
{
    /// <summary>Characters of a code: five bits each.</summary>
    public const int Length = 8;

    // Douglas Crockford, "Base 32": without I, L, O and U; what looks like a one or a nought is read as one.
    private const string Signs = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    /// <summary>A new code, 40 bits from the system's generator.</summary>
    public static string Make() => RandomNumberGenerator.GetString(Signs, Length);

    /// <summary>The code in two halves, as it is shown.</summary>
    public static string Shown(string code) => $"{code[..4]} {code[4..]}";

    /// <summary>What was typed, in the signs of a code; null where it cannot be one.</summary>
    public static string? Read(string? typed)
    {
        var signs = (typed ?? "").Where(c => c is not (' ' or '-')).Select(c => char.ToUpperInvariant(c) switch
        {
            'O' => '0',
            'I' or 'L' => '1',
            var other => other,
        }).Take(Length + 1).ToArray();
        return signs.Length == Length && signs.All(Signs.Contains) ? new string(signs) : null;
    }
}
