using Tickover.Workshop.Supply;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Supply;

/// <summary>What of a fuel supply is looked at.</summary>
/// <param name="Analysis">The supply and what it does.</param>
/// <param name="Here">The page's own address, without what is chosen on it.</param>
/// <param name="Kind">The case.</param>
/// <param name="Part">The part whose working is open; null for none.</param>
/// <param name="Visit">The visit it belongs to; null for a sample.</param>
public sealed record SupplyPlace(SupplyAnalysis Analysis, string Here, SupplyCaseKind Kind, string? Part, Id<Visit>? Visit)
{
    /// <summary>The cases by their words in the address.</summary>
    internal static IReadOnlyList<(string Word, SupplyCaseKind Kind)> Cases { get; } = [("idle", SupplyCaseKind.Idle), ("full", SupplyCaseKind.FullLoad), ("hot", SupplyCaseKind.Hot)];

    /// <summary>The same place in another case.</summary>
    internal string At(SupplyCaseKind kind) => Address(kind, Part);

    /// <summary>The same place with a part's working open.</summary>
    internal string At(string part) => Address(Kind, part) + "#working";

    private string Address(SupplyCaseKind kind, string? part) =>
        $"{Here}?case={Cases.First(known => known.Kind == kind).Word}{(part is null ? "" : $"&part={Uri.EscapeDataString(part)}")}";
}
