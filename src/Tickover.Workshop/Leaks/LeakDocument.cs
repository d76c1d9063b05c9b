using Tickover.Workshop.Leaks.Reading;

namespace Tickover.Workshop.Leaks;

/// <summary>Reads leak documents: JSON, format <c>tickover-leak-1</c>; docs/leak-document.md.</summary>
public static class LeakDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = LeakForm.Format;

    /// <summary>Largest document, bytes.</summary>
    public const int LargestBytes = Cars.Reading.SourceParser.LargestBytes;

    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The test, or all faults.</returns>
    public static LeakDocumentReading Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        return LeakReader.Read(json);
    }
}
