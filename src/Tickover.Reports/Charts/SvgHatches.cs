using System.Text;

namespace Tickover.Reports.Charts;

/// <summary>The hatches as SVG patterns.</summary>
internal static class SvgHatches
{
    internal static void Append(StringBuilder svg, string prefix)
    {
        Pattern(svg, prefix, Hatch.NoAnswer, 9, "<path d=\"M0 0V9\" stroke=\"var(--hair)\" stroke-width=\"2\"/>");
        Pattern(svg, prefix, Hatch.Lean, 7, "<path d=\"M0 0V7\" stroke=\"#000\" stroke-width=\"1.4\"/>");
        Pattern(svg, prefix, Hatch.Rich, 9, "<path d=\"M0 0H9\" stroke=\"#fff\" stroke-width=\"1.2\"/>");
        Pattern(
            svg, prefix, Hatch.Casing, 7,
            "<rect width=\"7\" height=\"7\" fill=\"var(--metal)\"/><path d=\"M0 0V7\" stroke=\"var(--metal-edge)\" opacity=\".45\"/>");
    }

    private static void Pattern(StringBuilder svg, string prefix, Hatch hatch, double size, string content) =>
        svg.Append("<pattern").Attribute("id", $"{prefix}-{hatch}").Attribute("width", size).Attribute("height", size)
            .Append(" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\">").Append(content).Append("</pattern>");
}
