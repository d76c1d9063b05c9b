namespace Tickover.Cli.Json;

/// <summary>What <c>next --json</c> prints; its form is docs/schemas/next.schema.json.</summary>
/// <param name="Car">The car's name.</param>
/// <param name="Proposed">The set whose map is to be made sure, part by part; empty for the set fitted.</param>
/// <param name="Readings">Readings, the best first.</param>
internal sealed record NextDocument(string Car, IReadOnlyList<string> Proposed, IReadOnlyList<NextLine> Readings)
{
    /// <summary>Name and version of the form.</summary>
    public string Schema { get; } = "tickover/next/1";
}
