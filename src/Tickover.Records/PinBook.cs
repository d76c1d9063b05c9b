using System.Globalization;
using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records;

/// <summary>The PINs, in a table of their own that no export carries.</summary>
/// <param name="store">The open record.</param>
/// <remarks>A PIN of few digits is guessed quickly by whoever has the database; it keeps colleagues honest, not thieves out.</remarks>
public sealed class PinBook(RecordStore store) : IPins
{
    private const int ShortestPin = 4;
    private const int LongestPin = 8;
    private const int FreeTries = 5;
    private const int SaltBytes = 16;
    private const int HashBytes = 32;

    /// <summary>OWASP Password Storage Cheat Sheet, PBKDF2 with HMAC-SHA-256.</summary>
    private const int Iterations = 600_000;

    private static readonly TimeSpan FirstWait = TimeSpan.FromMinutes(1);

    private static readonly TimeSpan LongestWait = TimeSpan.FromHours(1);

    /// <inheritdoc/>
    public Task<bool> HasPinAsync(Id<Person> person, CancellationToken cancellation = default) =>
        store.ReadAsync(context => context.Pins.AnyAsync(p => p.Person == person.Value, cancellation));

    /// <inheritdoc/>
    public async Task<string?> SetAsync(Id<Person> person, string pin, string? current, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(pin);
        if (pin.Length is < ShortestPin or > LongestPin || !pin.All(char.IsAsciiDigit))
        {
            return "A PIN is four to eight digits.";
        }

        if (await HasPinAsync(person, cancellation))
        {
            if (current is null)
            {
                return "This person has a PIN. Type the old one too.";
            }

            if (await TryAsync(person, current, cancellation) is { } wrong)
            {
                return wrong;
            }
        }

        // Turned over before the one writer's place is taken: it takes a good part of a second.
        var salt = RandomNumberGenerator.GetBytes(SaltBytes);
        var hash = Hash(pin, salt, Iterations);
        return await store.WriteAloneAsync(context => KeepAsync(context, new PinRow { Person = person.Value, Salt = salt, Hash = hash, Iterations = Iterations }, current, cancellation), cancellation);
    }

    /// <inheritdoc/>
    public async Task<string?> TryAsync(Id<Person> person, string pin, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(pin);
        var row = await store.ReadAsync(context => context.Pins.AsNoTracking().FirstOrDefaultAsync(p => p.Person == person.Value, cancellation));
        if (row is null)
        {
            return "This person has no PIN yet. Set one under Workshop, People.";
        }

        var right = CryptographicOperations.FixedTimeEquals(Hash(pin, row.Salt, row.Iterations), row.Hash);
        return await store.WriteAloneAsync(context => CountAsync(context, row, right, cancellation), cancellation);
    }

    private static byte[] Hash(string pin, byte[] salt, int iterations) =>
        Rfc2898DeriveBytes.Pbkdf2(pin, salt, iterations, HashAlgorithmName.SHA256, HashBytes);

    private static async Task<string?> KeepAsync(RecordsContext context, PinRow fresh, string? current, CancellationToken cancellation)
    {
        var row = await context.Pins.FindAsync([fresh.Person], cancellation);
        if (row is null)
        {
            context.Pins.Add(fresh);
        }
        else if (current is null)
        {
            return "This person has a PIN since a moment ago. Type the old one too.";
        }
        else
        {
            (row.Salt, row.Hash, row.Iterations, row.WrongTries, row.ShutUntil) = (fresh.Salt, fresh.Hash, fresh.Iterations, 0, null);
        }

        await context.SaveChangesAsync(cancellation);
        return null;
    }

    private async Task<string?> CountAsync(RecordsContext context, PinRow tried, bool right, CancellationToken cancellation)
    {
        var now = store.Clock.GetUtcNow();
        if (await context.Pins.FindAsync([tried.Person], cancellation) is not { } row || !row.Salt.AsSpan().SequenceEqual(tried.Salt))
        {
            return "The PIN was changed just now. Type it again.";
        }

        // A clock set back must not shut somebody out for longer than the longest wait.
        if (row.ShutUntil is { } until && until > now && until - now <= LongestWait)
        {
            return $"Too many wrong PINs. Wait until {until.ToLocalTime().ToString("HH:mm", CultureInfo.InvariantCulture)}.";
        }

        row.WrongTries = right ? 0 : row.WrongTries + 1;
        row.ShutUntil = row.WrongTries < FreeTries ? null : now + Wait(row.WrongTries - FreeTries);
        await context.SaveChangesAsync(CancellationToken.None);
        return right ? null : "The PIN is wrong. Nothing was signed.";
    }

    private static TimeSpan Wait(int beyond) => beyond >= 6 ? LongestWait : TimeSpan.FromTicks(Math.Min(LongestWait.Ticks, FirstWait.Ticks << beyond));
}
