using Tickover.Reports.Mixture;
using Tickover.Workshop.Supply;

namespace Tickover.Reports.Supply;

/// <summary>What the picture of a fuel supply shows.</summary>
public sealed record SupplyView
{
    /// <summary>The supply and what it does.</summary>
    public required SupplyAnalysis Analysis { get; init; }

    /// <summary>Which case.</summary>
    public SupplyCaseKind Kind { get; init; } = SupplyCaseKind.FullLoad;

    /// <summary>Name of the part whose working is open; null for none.</summary>
    public string? Chosen { get; init; }

    /// <summary>For a wide page or for a phone.</summary>
    public PictureSize Size { get; init; }

    /// <summary>Begins every id inside, so that several pictures live on one page.</summary>
    public required string IdPrefix { get; init; }

    /// <summary>Where a tap on a part leads, from its name; null draws no links.</summary>
    public Func<string, string>? AddressOf { get; init; }

    /// <summary>The case shown.</summary>
    public SupplyCase Case => Analysis.Of(Kind);
}
