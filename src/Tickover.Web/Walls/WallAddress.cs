using Tickover.Web.Worksheets;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Walls;

/// <summary>Addresses of the pages of a wall survey.</summary>
internal static class WallAddress
{
    /// <summary>A survey with a cell's working open.</summary>
    public static string Of(string id, Id<Visit>? visit, string? cell = null) =>
        cell is null ? IntakeAddress.Of($"/walls/{id}", visit) : $"/walls/{id}?cell={cell}{(visit is { } known ? $"&visit={known}" : "")}#cell";
}
