using System.Globalization;
using Tickover.Reports.Linkages;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Linkages;

/// <summary>Addresses of the linkage pages; where one came from a visit, its number goes along so that Back leads there again.</summary>
internal static class LinkageAddress
{
    /// <summary>The page that takes a linkage in.</summary>
    public static string List(Id<Visit>? visit) => $"/linkages{(visit is { } known ? $"?visit={known}" : "")}";

    /// <summary>A linkage with the pedal where it usually begins.</summary>
    public static string Of(string linkage, Id<Visit>? visit) => $"/linkages/{linkage}{(visit is { } known ? $"?visit={known}" : "")}";

    /// <summary>A linkage with the pedal so far down.</summary>
    public static string Of(LinkagePlace place, LinkageSetting setting) => string.Create(
        CultureInfo.InvariantCulture,
        $"/linkages/{place.Linkage.Id}?down={place.Down}{(setting is LinkageSetting.AsAdvised ? "&set=1" : "")}{(place.Visit is { } visit ? $"&visit={visit}" : "")}");

    /// <summary>Where the linkages were come to from: a visit's balance, or the cars.</summary>
    public static (string Address, string Word) From(Id<Visit>? visit) => visit is { } known ? (Addresses.Of(known, Stage.Balance), "Balance") : ("/bench", "Bench");
}
