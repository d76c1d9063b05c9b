using System.Globalization;

namespace Tickover.Reports.Charts;

/// <summary>Makes a picture of a page into a file of its own: size, ground, and the colours of paper in place of the page's theme.</summary>
internal static class SvgFile
{
    // The paper theme of the pages (wwwroot/css/tickover.css).
    private const string Colours =
        "svg{--ink:#0f1e1e;--ink-2:#364645;--hair:#c6d0cd;--surface:#ffffff;--sunken:#e2e8e5;--mark:#2a2e9a;--on-mark:#ffffff;--fuel:#eab13c;--fuel-edge:#855600;"
        + "--air:#a9d8ea;--air-edge:#075f80;--metal:#d3dad8;--metal-2:#b9c3c0;--metal-edge:#485655;--band:#d3dad8;--stroke:1.5px;--font:\"Noto Sans\",Arial,sans-serif;"
        + "--series-1:#0072b2;--series-2:#d55e00;--series-3:#009e73;--series-4:#cc79a7;--series-5:#56b4e9;--series-6:#e69f00}";

    internal static string Of(string svg, double width, double height)
    {
        var body = svg.IndexOf('>', StringComparison.Ordinal) + 1;
        var size = string.Create(CultureInfo.InvariantCulture, $" width=\"{width:0.#}\" height=\"{height:0.#}\">");
        var ground = string.Create(CultureInfo.InvariantCulture, $"<style>{Colours}</style><rect width=\"{width:0.#}\" height=\"{height:0.#}\" fill=\"#ffffff\"/>");
        return $"<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n{svg[..(body - 1)]}{size}{ground}{svg[body..]}\n";
    }
}
