using Tickover.Workshop.FaultFinding.Reading;

namespace Tickover.Workshop.FaultFinding;

/// <summary>Reads documents of causes, symptoms and tests: JSON, format <c>tickover-faults-1</c>; docs/faults-document.md.</summary>
public static class FaultKnowledgeDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = FaultForm.Format;

    /// <summary>Reads a workshop's own document on top of the table of the trade; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <param name="upon">What it extends; entries with the same key are replaced.</param>
    /// <returns>The knowledge, or all faults.</returns>
    public static FaultKnowledgeReading Read(string json, FaultKnowledge upon)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(upon);
        return FaultKnowledgeReader.Read(json, upon);
    }
}
