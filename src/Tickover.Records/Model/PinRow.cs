namespace Tickover.Records.Model;

/// <summary>A PIN, hashed.</summary>
internal sealed class PinRow
{
    /// <summary>Whose.</summary>
    public Guid Person { get; init; }

    /// <summary>Random bytes mixed in.</summary>
    public byte[] Salt { get; set; } = [];

    /// <summary>PBKDF2 with SHA-256.</summary>
    public byte[] Hash { get; set; } = [];

    /// <summary>How often it was turned over.</summary>
    public int Iterations { get; set; }

    /// <summary>Wrong tries in a row.</summary>
    public int WrongTries { get; set; }

    /// <summary>No try counts before this moment.</summary>
    public DateTimeOffset? ShutUntil { get; set; }
}
