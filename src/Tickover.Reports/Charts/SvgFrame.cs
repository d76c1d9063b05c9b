namespace Tickover.Reports.Charts;

/// <summary>Size and meaning of a whole drawing.</summary>
internal sealed record SvgFrame
{
    /// <summary>What of the drawing shows first at the left; zero shows it from its origin.</summary>
    internal double Left { get; init; }

    /// <summary>What of the drawing shows first at the top.</summary>
    internal double Top { get; init; }

    internal required double Width { get; init; }

    internal required double Height { get; init; }

    /// <summary>Class of the svg element, for the page's style sheet.</summary>
    internal required string ClassName { get; init; }

    /// <summary>The sentence that stands for the picture.</summary>
    internal required string Label { get; init; }

    /// <summary>ARIA role: <c>img</c>, or <c>group</c> where parts inside can be chosen.</summary>
    internal string Role { get; init; } = "img";

    /// <summary>Names and values of data attributes for the page's script.</summary>
    internal IReadOnlyList<(string Name, string Value)> Data { get; init; } = [];
}
