namespace Tickover.Workshop.Visits;

/// <summary>Makes and reads identifiers.</summary>
public static class Id
{
    /// <summary>A new identifier that sorts by the time it was made.</summary>
    /// <typeparam name="T">What is named.</typeparam>
    /// <returns>The identifier.</returns>
    public static Id<T> New<T>() => new(Guid.CreateVersion7());

    /// <summary>Reads an identifier; never throws.</summary>
    /// <typeparam name="T">What is named.</typeparam>
    /// <param name="text">What an address or a form holds.</param>
    /// <returns>The identifier, or null.</returns>
    public static Id<T>? Read<T>(string? text) => Guid.TryParse(text, out var value) && value != Guid.Empty ? new Id<T>(value) : null;
}
