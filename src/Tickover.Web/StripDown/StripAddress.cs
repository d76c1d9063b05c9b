using Tickover.Web.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Web.StripDown;

/// <summary>Addresses of the pages of the strip-down; where one came from a visit, its number goes along so that Back leads there again.</summary>
internal static class StripAddress
{
    /// <summary>The page that takes a sheet in.</summary>
    public static string List(Id<Visit>? visit) => "/strip-down" + Query(visit);

    /// <summary>A set's float levels.</summary>
    public static string Level(string id, Id<Visit>? visit) => $"/levels/{id}{Query(visit)}";

    /// <summary>A set's wear.</summary>
    public static string Wear(string id, Id<Visit>? visit) => $"/wear/{id}{Query(visit)}";

    /// <summary>Where they were come to from: a visit's strip-down, or the cars.</summary>
    public static (string Address, string Word) From(Id<Visit>? visit) => visit is { } known ? (Addresses.Of(known, Stage.StripDown), "Strip-down") : ("/bench", "Bench");

    private static string Query(Id<Visit>? visit) => visit is { } known ? $"?visit={known}" : "";
}
