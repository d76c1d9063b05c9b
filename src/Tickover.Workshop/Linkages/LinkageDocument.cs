using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Linkages;

/// <summary>Reads linkage documents: JSON, format <c>tickover-linkage-1</c>; docs/linkage-document.md.</summary>
public static class LinkageDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = LinkageForm.Format;

    /// <summary>Largest document, bytes; a linkage takes some 3 kB.</summary>
    public const int LargestBytes = Cars.Reading.SourceParser.LargestBytes;

    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The linkage, or all faults.</returns>
    public static LinkageReading Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        return LinkageReader.Read(json);
    }
}
