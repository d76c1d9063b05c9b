using System.Text;

namespace Tickover.Workshop.Cars.Reading;

/// <summary>A value of a document with the bytes it takes up, so that a change touches those and no others.</summary>
internal sealed record SourceNode
{
    private const int LongestShown = 40;

    /// <summary>What it is.</summary>
    public required SourceKind Kind { get; init; }

    /// <summary>First byte.</summary>
    public required int Start { get; init; }

    /// <summary>Byte after the last.</summary>
    public required int End { get; init; }

    /// <summary>The text of a text, the digits of a number, the word of a literal; else empty.</summary>
    public string Text { get; init; } = string.Empty;

    /// <summary>Items of a list.</summary>
    public IReadOnlyList<SourceNode> Items { get; init; } = [];

    /// <summary>Members of an object, in order, as often as they stand there.</summary>
    public IReadOnlyList<SourceMember> Members { get; init; } = [];

    /// <summary>The value in words, for a message.</summary>
    public string Described => Kind switch
    {
        SourceKind.Text => $"the text \"{Shortened}\"",
        SourceKind.Number => $"the number {Shortened}",
        SourceKind.Literal => Text,
        SourceKind.List => "a list",
        _ => "an object in braces",
    };

    /// <summary>The value as it is written.</summary>
    /// <param name="json">The text it was read from.</param>
    /// <returns>That part of the text.</returns>
    public string WrittenIn(string json) => Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(json).AsSpan(Start..End));

    private string Shortened => Text.Length <= LongestShown ? Text : Text[..LongestShown] + "…";

    /// <summary>The value of the first member of a name.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The value, or null.</returns>
    public SourceNode? this[string name] => Member(name)?.Value;

    /// <summary>The first member of a name.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The member, or null.</returns>
    public SourceMember? Member(string name) => Members.FirstOrDefault(m => string.Equals(m.Name, name, StringComparison.Ordinal));
}
