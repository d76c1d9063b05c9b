using System.Collections.Frozen;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Paper;

/// <summary>The theme's colours on paper. Each reads at 7:1 on white or stands beside a shape and a word, so grey prints lose nothing.</summary>
internal static class PaperColours
{
    /// <summary>Colours by their role, as #rrggbb.</summary>
    internal static readonly FrozenDictionary<string, string> ByRole = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["ink"] = "#0f1e1e",
        ["ink-2"] = "#364645",
        ["surface"] = "#ffffff",
        ["sunken"] = "#e2e8e5",
        ["line"] = "#6b7b79",
        ["hair"] = "#c6d0cd",
        ["mark"] = "#2a2e9a",
        ["on-mark"] = "#ffffff",
        ["fuel"] = "#eab13c",
        ["fuel-edge"] = "#855600",
        ["air"] = "#a9d8ea",
        ["air-edge"] = "#075f80",
        ["metal"] = "#d3dad8",
        ["metal-2"] = "#b9c3c0",
        ["metal-edge"] = "#485655",
        ["band"] = "#dfe4e2",
        ["within"] = "#075f80",
        ["out"] = "#8f3500",
        ["unsafe"] = "#94130d",
        ["soon"] = "#684000",
        ["watch"] = "#264a66",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The colour of a paint that is no hatch, as #rrggbb or #rgb.</summary>
    internal static string Of(Paint paint) => paint.Kind == PaintKind.Theme ? ByRole[paint.Name] : paint.Name;
}
