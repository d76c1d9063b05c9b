using Tickover.Workshop.Tanks.Reading;

namespace Tickover.Workshop.Tanks;

/// <summary>Reads tank documents: JSON, format <c>tickover-tank-1</c>; docs/tank-document.md.</summary>
public static class TankDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = TankForm.Format;

    /// <summary>Largest document, bytes.</summary>
    public const int LargestBytes = Cars.Reading.SourceParser.LargestBytes;

    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <param name="mesh">Fetches the mesh file of a name that stands in the document; null for none there. Without it no mesh can be used.</param>
    /// <returns>The tanks, or all faults.</returns>
    public static TankReading Read(string json, Func<string, byte[]?>? mesh = null)
    {
        ArgumentNullException.ThrowIfNull(json);
        return TankReader.Read(json, mesh);
    }
}
