namespace Tickover.Cli.Json;

/// <summary>What <c>check --json</c> prints; its form is docs/schemas/check.schema.json.</summary>
/// <param name="Documents">One for each document asked about, in order.</param>
internal sealed record CheckDocument(IReadOnlyList<CheckedDocument> Documents)
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/check/1";
}
