using Tickover.Workshop.Cars;

namespace Tickover.Web.Cars;

/// <summary>One field of the form of a car.</summary>
public sealed record DescriptionField
{
    /// <summary>Path of the figure in the document; the field's name.</summary>
    public required string Path { get; init; }

    /// <summary>The trade's name.</summary>
    public required string Label { get; init; }

    /// <summary>The text in the field.</summary>
    public required string Text { get; init; }

    /// <summary>The unit written after a bare number; empty where there is none.</summary>
    public string Unit { get; init; } = "";

    /// <summary>The allowed range in words.</summary>
    public string Range { get; init; } = "";

    /// <summary>What it is.</summary>
    public string Help { get; init; } = "";

    /// <summary>What holds where the field is empty, and why; null where the document gives the figure.</summary>
    public string? Default { get; init; }

    /// <summary>Sizes of the barrels where they differ; null where they do not.</summary>
    public string? Differs { get; init; }

    /// <summary>What is wrong with what was typed.</summary>
    public Fault? Fault { get; init; }

    /// <summary>An identifier for the page: the path without its brackets.</summary>
    public string ElementId => "f-" + string.Concat(Path.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));
}
