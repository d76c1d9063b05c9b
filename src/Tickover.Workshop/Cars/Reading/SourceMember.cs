namespace Tickover.Workshop.Cars.Reading;

/// <summary>A named member and where its name begins in the text.</summary>
/// <param name="Name">The name.</param>
/// <param name="Start">Byte at which the name's quote stands.</param>
/// <param name="Value">The value.</param>
internal sealed record SourceMember(string Name, int Start, SourceNode Value);
