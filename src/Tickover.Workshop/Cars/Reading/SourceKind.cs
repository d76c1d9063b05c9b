namespace Tickover.Workshop.Cars.Reading;

/// <summary>What stands at a place of a document.</summary>
internal enum SourceKind
{
    /// <summary>Text in quotes.</summary>
    Text,

    /// <summary>A number, kept as it is written.</summary>
    Number,

    /// <summary>True, false or null.</summary>
    Literal,

    /// <summary>A list.</summary>
    List,

    /// <summary>Members with names.</summary>
    Object,
}
