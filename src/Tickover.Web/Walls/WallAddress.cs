using Tickover.Web.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Walls;

/// <summary>Addresses of the pages of walls and leak tests; where one came from a visit, its number goes along so that Back leads there again.</summary>
internal static class WallAddress
{
    /// <summary>The page that takes a document in.</summary>
    public static string List(Id<Visit>? visit) => "/walls" + Query(visit, null);

    /// <summary>A survey with a cell's working open.</summary>
    public static string Wall(string id, Id<Visit>? visit, string? cell = null) => $"/walls/{id}{Query(visit, cell)}{(cell is null ? "" : "#cell")}";

    /// <summary>A leak test.</summary>
    public static string Leak(string id, Id<Visit>? visit) => $"/leaks/{id}{Query(visit, null)}";

    /// <summary>Where they were come to from: a visit's storage, or the cars.</summary>
    public static (string Address, string Word) From(Id<Visit>? visit) => visit is { } known ? (Addresses.Of(known, Stage.Storage), "Storage") : ("/bench", "Bench");

    private static string Query(Id<Visit>? visit, string? cell)
    {
        string[] parts = [.. cell is null ? [] : new[] { $"cell={cell}" }, .. visit is { } known ? new[] { $"visit={known}" } : []];
        return parts.Length == 0 ? "" : "?" + string.Join('&', parts);
    }
}
