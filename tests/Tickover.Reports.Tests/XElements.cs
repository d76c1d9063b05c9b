using System.Xml.Linq;

namespace Tickover.Reports.Tests;

internal static class XElements
{
    /// <summary>Whether an element has an attribute of exactly this value.</summary>
    internal static bool Has(this XElement element, string name, string value) =>
        string.Equals(element.Attribute(name)?.Value, value, StringComparison.Ordinal);
}
