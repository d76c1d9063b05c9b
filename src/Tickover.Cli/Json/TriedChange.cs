namespace Tickover.Cli.Json;

/// <summary>One change of a trial.</summary>
/// <param name="Path">Where in the document.</param>
/// <param name="Text">The new text.</param>
internal sealed record TriedChange(string Path, string Text);
