using System.Text.Json.Serialization;

namespace Tickover.Web.Lan;

/// <summary>A tablet that was let in.</summary>
internal sealed record PairedDevice
{
    /// <summary>Names it to this server.</summary>
    public required string Id { get; init; }

    /// <summary>What a person calls it; no two share one, taken off or not.</summary>
    public required string Name { get; init; }

    /// <summary>SHA-256 of the token in its cookie. The token has 256 random bits, so a bare hash cannot be turned back.</summary>
    public required string TokenHash { get; init; }

    /// <summary>When that token was made.</summary>
    public required DateTimeOffset TokenSince { get; init; }

    /// <summary>SHA-256 of a new token that was sent and has not been seen in use.</summary>
    public string? NextHash { get; init; }

    /// <summary>When the new token was sent.</summary>
    public DateTimeOffset? NextSince { get; init; }

    /// <summary>When it was paired.</summary>
    public required DateTimeOffset Paired { get; init; }

    /// <summary>When it was last here, to the hour.</summary>
    public required DateTimeOffset Seen { get; init; }

    /// <summary>When it was taken off; null while it is let in.</summary>
    public DateTimeOffset? Revoked { get; init; }

    /// <summary>The same for the rest of the program.</summary>
    [JsonIgnore]
    public RequestDevice Device => new(Id, Name);
}
