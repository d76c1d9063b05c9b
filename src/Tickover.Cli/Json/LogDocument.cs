namespace Tickover.Cli.Json;

/// <summary>What <c>log --json</c> prints; its form is docs/schemas/log.schema.json.</summary>
internal sealed record LogDocument
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/log/1";

    /// <summary>The car's name.</summary>
    public required string Car { get; init; }

    /// <summary>The logs in the order given.</summary>
    public required IReadOnlyList<LoggedFile> Logs { get; init; }
}
