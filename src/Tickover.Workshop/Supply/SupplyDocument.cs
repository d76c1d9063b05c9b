using Tickover.Workshop.Supply.Reading;

namespace Tickover.Workshop.Supply;

/// <summary>Reads supply documents: JSON, format <c>tickover-supply-1</c>; docs/supply-document.md.</summary>
public static class SupplyDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = SupplyForm.Format;

    /// <summary>Largest document, bytes; a supply takes some 4 kB.</summary>
    public const int LargestBytes = Cars.Reading.SourceParser.LargestBytes;

    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The supply, or all faults.</returns>
    public static SupplyRead Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        return SupplyReader.Read(json);
    }
}
