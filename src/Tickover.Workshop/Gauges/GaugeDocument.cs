using Tickover.Workshop.Gauges.Reading;

namespace Tickover.Workshop.Gauges;

/// <summary>Reads gauge documents: JSON, format <c>tickover-gauge-1</c>; docs/gauge-document.md.</summary>
public static class GaugeDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = GaugeForm.Format;

    /// <summary>Largest document, bytes.</summary>
    public const int LargestBytes = Cars.Reading.SourceParser.LargestBytes;

    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The car's tanks and gauge, or all faults.</returns>
    public static GaugeReadingResult Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        return GaugeReader.Read(json);
    }
}
