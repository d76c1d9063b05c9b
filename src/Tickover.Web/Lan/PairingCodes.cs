using System.Net;
using System.Security.Cryptography;

namespace Tickover.Web.Lan;

/// <summary>The pairing code that is good at present, of which only a hash is kept, in memory.</summary>
/// <remarks>Time is taken from the running counter, not the clock: setting the clock back gives a code no second life.</remarks>
internal sealed class PairingCodes(TimeProvider time)
{
    /// <summary>How long a code is good.</summary>
    public static readonly TimeSpan Life = TimeSpan.FromMinutes(10);

    /// <summary>Wrong tries from one address.</summary>
    public const int TriesOfOne = 5;

    /// <summary>Wrong tries in all; then a new code is needed.</summary>
    public const int TriesOfAll = 20;

    // PBKDF2 as for a password, with fewer rounds than one on a disk would get: this hash lives ten minutes, in memory only.
    private const int Rounds = 50_000;
    private const int HashBytes = 32;
    private const int SaltBytes = 16;
    private readonly Lock _gate = new();
    private readonly Dictionary<IPAddress, int> _wrong = [];
    private Current? _current;

    /// <summary>Makes a code; the one before it is no longer good.</summary>
    /// <returns>The code, for showing once.</returns>
    public string Make()
    {
        var code = PairingCode.Make();
        var salt = RandomNumberGenerator.GetBytes(SaltBytes);
        lock (_gate)
        {
            _current = new Current(Hash(code, salt), salt, time.GetTimestamp());
            _wrong.Clear();
        }

        return code;
    }

    /// <summary>Takes a code that was typed; a right one is used up by it.</summary>
    /// <param name="typed">As typed.</param>
    /// <param name="from">Address it came from.</param>
    public PairingOutcome Take(string? typed, IPAddress from)
    {
        lock (_gate)
        {
            if (_current is not { } current || time.GetElapsedTime(current.Since) >= Life)
            {
                _current = null;
                return PairingOutcome.NoCode;
            }

            if (_wrong.GetValueOrDefault(from) >= TriesOfOne)
            {
                return PairingOutcome.TooManyTries;
            }

            if (PairingCode.Read(typed) is { } code && CryptographicOperations.FixedTimeEquals(Hash(code, current.Salt), current.Hash))
            {
                _current = null;
                return PairingOutcome.Good;
            }

            _wrong[from] = _wrong.GetValueOrDefault(from) + 1;
            _current = _wrong.Values.Sum() < TriesOfAll ? current : null;
            return PairingOutcome.Wrong;
        }
    }

    private static byte[] Hash(string code, byte[] salt) => Rfc2898DeriveBytes.Pbkdf2(code, salt, Rounds, HashAlgorithmName.SHA256, HashBytes);

    private sealed record Current(byte[] Hash, byte[] Salt, long Since);
}
