namespace Tickover.Workshop.Visits;

/// <summary>The PINs people sign with. They are kept apart from the record and never leave the server.</summary>
public interface IPins
{
    /// <summary>Whether a person has a PIN.</summary>
    /// <param name="person">Who.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>Whether there is one.</returns>
    Task<bool> HasPinAsync(Id<Person> person, CancellationToken cancellation = default);

    /// <summary>Sets a PIN of 4 to 8 digits.</summary>
    /// <param name="person">Who.</param>
    /// <param name="pin">The new PIN.</param>
    /// <param name="current">The PIN it replaces; null only where there was none.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>Null where it was set, else why not.</returns>
    Task<string?> SetAsync(Id<Person> person, string pin, string? current, CancellationToken cancellation = default);

    /// <summary>Tries a PIN. After five wrong ones in a row the person has to wait, each time longer.</summary>
    /// <param name="person">Who.</param>
    /// <param name="pin">What was typed.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>Null where it is right, else what to say.</returns>
    Task<string?> TryAsync(Id<Person> person, string pin, CancellationToken cancellation = default);
}
