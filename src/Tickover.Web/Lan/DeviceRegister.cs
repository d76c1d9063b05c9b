using System.Collections.Concurrent;

namespace Tickover.Web.Lan;

/// <summary>The tablets that are let in. Safe to use from many requests at once.</summary>
internal sealed partial class DeviceRegister(DeviceFile file, TimeProvider time, ILogger<DeviceRegister> log)
{
    /// <summary>A tablet not seen for this long has to be paired again.</summary>
    public static readonly TimeSpan IdleEnd = TimeSpan.FromDays(180);

    /// <summary>A token older than this is replaced at the next page.</summary>
    public static readonly TimeSpan TokenAge = TimeSpan.FromDays(7);

    // The old token answers for requests already under way when the new one is first used.
    private static readonly TimeSpan Grace = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan SeenTo = TimeSpan.FromHours(1);
    private static readonly TimeSpan ClockSetBack = TimeSpan.FromDays(1);
    private readonly Lock _gate = new();
    private readonly ConcurrentDictionary<string, CancellationTokenSource> _open = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (string Hash, long Since)> _retiring = new(StringComparer.Ordinal);

    /// <summary>What was wrong with the file of devices; null if nothing.</summary>
    public string? Trouble => file.Trouble;

    /// <summary>Every tablet that is let in.</summary>
    public IReadOnlyList<PairedDevice> List()
    {
        lock (_gate)
        {
            return [.. file.Read().Where(IsIn)];
        }
    }

    /// <summary>Lets a tablet in.</summary>
    /// <returns>The tablet, under a name nobody else has, and the token for its cookie.</returns>
    /// <exception cref="IOException">It could not be kept, so it is not in.</exception>
    public (RequestDevice Device, string Token) Add(string name)
    {
        var token = DeviceToken.Make();
        var now = time.GetUtcNow();
        lock (_gate)
        {
            var added = new PairedDevice
            {
                Id = Guid.CreateVersion7(now).ToString("N"),
                Name = Free(name),
                TokenHash = DeviceToken.Hash(token),
                TokenSince = now,
                Paired = now,
                Seen = now,
            };
            file.Change(all => [.. all, added]);
            return (added.Device, token);
        }
    }

    /// <summary>Tells which tablet a token belongs to.</summary>
    /// <param name="token">From the cookie.</param>
    /// <param name="isPage">Whether a whole page is asked for: the moment at which a new token can be sent.</param>
    /// <returns>The tablet; null where the token is nobody's, taken off or too long idle.</returns>
    public Recognised? Recognise(string token, bool isPage)
    {
        var hash = DeviceToken.Hash(token);
        lock (_gate)
        {
            return file.Read().FirstOrDefault(d => IsIn(d) && Owns(d, hash)) is { } device
                ? new Recognised(device.Device, Keep(device, hash, isPage))
                : null;
        }
    }

    /// <summary>Ends when the tablet is taken off: for whatever stays open.</summary>
    public CancellationToken TakenOff(string id) => _open.GetOrAdd(id, _ => new CancellationTokenSource()).Token;

    /// <summary>Takes a tablet off; what it has open is closed.</summary>
    public void Revoke(string id) => Revoke(d => string.Equals(d.Id, id, StringComparison.Ordinal));

    /// <summary>Lets a tablet in no more; what it has open stays until <see cref="CloseWhatIsOff"/>, so that it can still be answered.</summary>
    /// <exception cref="IOException">It could not be written down, so the tablet is still in.</exception>
    public void Leave(string id) => TakeOff(d => string.Equals(d.Id, id, StringComparison.Ordinal));

    /// <summary>Takes every tablet off.</summary>
    public void RevokeAll() => Revoke(_ => true);

    /// <summary>Closes what is open of tablets that are off, also where another server on the same data took them off.</summary>
    public void CloseWhatIsOff()
    {
        var known = List().Select(d => d.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var id in _open.Keys.Where(id => !known.Contains(id)))
        {
            Close(id);
        }
    }

    private void Revoke(Func<PairedDevice, bool> which)
    {
        TakeOff(which);
        CloseWhatIsOff();
    }

    private void TakeOff(Func<PairedDevice, bool> which)
    {
        lock (_gate)
        {
            file.Change(all => [.. all.Select(d => d.Revoked is null && which(d) ? d with { Revoked = time.GetUtcNow() } : d)]);
        }
    }

    private void Close(string id)
    {
        if (_open.TryRemove(id, out var source))
        {
            source.Cancel();
            source.Dispose();
        }
    }

    private bool IsIn(PairedDevice device) => device.Revoked is null && time.GetUtcNow() - device.Seen < IdleEnd;

    private bool Owns(PairedDevice device, string hash) =>
        DeviceToken.Same(device.TokenHash, hash)
        || DeviceToken.Same(device.NextHash, hash)
        || (_retiring.TryGetValue(device.Id, out var old) && time.GetElapsedTime(old.Since) < Grace && DeviceToken.Same(old.Hash, hash));

    // Writes down what the visit changed: the new token in use, a newer token sent, the hour. Returns the newer token.
    private string? Keep(PairedDevice device, string hash, bool isPage)
    {
        var now = time.GetUtcNow();
        var kept = device;
        string? token = null;
        if (DeviceToken.Same(device.NextHash, hash))
        {
            _retiring[device.Id] = (device.TokenHash, time.GetTimestamp());
            kept = kept with { TokenHash = hash, TokenSince = now, NextHash = null, NextSince = null };
        }
        else if (isPage && DeviceToken.Same(device.TokenHash, hash) && IsDue(device, now))
        {
            token = DeviceToken.Make();
            kept = kept with { NextHash = DeviceToken.Hash(token), NextSince = now };
        }

        if (IsPast(now - device.Seen, SeenTo))
        {
            kept = kept with { Seen = now };
        }

        return kept == device || TryReplace(kept) ? token : null;
    }

    private static bool IsDue(PairedDevice device, DateTimeOffset now) =>
        IsPast(now - device.TokenSince, TokenAge) && (device.NextSince is not { } sent || IsPast(now - sent, Grace));

    // A clock that was ahead and is set back must not make a token or a tablet last for ever.
    private static bool IsPast(TimeSpan elapsed, TimeSpan limit) => elapsed > limit || elapsed < -ClockSetBack;

    private bool TryReplace(PairedDevice kept)
    {
        try
        {
            file.Change(all => [.. all.Select(d => string.Equals(d.Id, kept.Id, StringComparison.Ordinal) && d.Revoked is null ? kept : d)]);
            return true;
        }
        catch (IOException e)
        {
            // A full disk does not turn tablets away: they go on with the token they have.
            NotWritten(log, e);
            return false;
        }
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "The list of paired tablets could not be written.")]
    private static partial void NotWritten(ILogger log, Exception reason);

    private string Free(string name)
    {
        var taken = file.Read().Select(d => d.Name).Append(RequestDevice.ThisMachine.Name).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return Enumerable.Range(1, taken.Count + 1).Select(n => n == 1 ? name : $"{name} {n}").First(n => !taken.Contains(n));
    }
}
