using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Tickover.Workshop.Visits;

/// <summary>How many of a size of jet or choke are on the workshop's shelf.</summary>
public sealed record StockJet : RecordItem<StockJet>
{
    /// <summary>The part, by its name in a car's document, such as <c>mainJet</c>.</summary>
    public string Part { get; init; } = "";

    /// <summary>Size in the number's own unit: hundredths of a millimetre for jets, millimetres for chokes.</summary>
    public double Size { get; init; }

    /// <summary>How many there are.</summary>
    public int Count { get; init; }

    /// <summary>The number of the item for a size of a part: there is one shelf, so two tablets that count the same size change one item.</summary>
    /// <param name="part">The part, by its name in a car's document.</param>
    /// <param name="size">Size in the number's own unit.</param>
    /// <returns>The number.</returns>
    public static Id<StockJet> IdFor(string part, double size)
    {
        var text = string.Create(CultureInfo.InvariantCulture, $"tickover shelf {part} {size:R}");
        return new(new Guid(SHA256.HashData(Encoding.UTF8.GetBytes(text)).AsSpan(0, 16)));
    }
}
