using Tickover.Workshop.Walls.Reading;

namespace Tickover.Workshop.Walls;

/// <summary>Reads wall documents: JSON, format <c>tickover-wall-1</c>; docs/wall-document.md.</summary>
public static class WallDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = WallForm.Format;

    /// <summary>Largest document, bytes; a survey takes some 3 kB.</summary>
    public const int LargestBytes = Cars.Reading.SourceParser.LargestBytes;

    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The survey, or all faults.</returns>
    public static WallDocumentReading Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        return WallReader.Read(json);
    }
}
