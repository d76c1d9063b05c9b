using Tickover.Web.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Gauges;

/// <summary>Addresses of the gauge pages.</summary>
internal static class GaugeAddress
{
    /// <summary>The page that takes a gauge in.</summary>
    public static string List(Id<Visit>? visit) => $"/gauges{(visit is { } known ? $"?visit={known}" : "")}";

    /// <summary>A gauge on its own road.</summary>
    public static string Of(string id, Id<Visit>? visit) => $"/gauges/{id}{(visit is { } known ? $"?visit={known}" : "")}";

    /// <summary>Where the gauges were come to from.</summary>
    public static (string Address, string Word) From(Id<Visit>? visit) => visit is { } known ? (Addresses.Of(known, Stage.Gauge), "Gauge") : ("/cars", "Cars");
}
