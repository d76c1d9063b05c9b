using System.Globalization;
using Tickover.Workshop.Gauges;

namespace Tickover.Web.Gauges;

/// <summary>Short words on the gauge page; js/gauge.js says the same while it plays.</summary>
internal static class GaugeWordsOnPage
{
    private const double Still = 0.05;               // L/min
    private const double Straight = 0.05;            // g

    public static string Flow(double litresPerMinute) => Math.Abs(litresPerMinute) < Still
        ? "nothing crosses"
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(litresPerMinute):0.0} L/min to the {(litresPerMinute > 0 ? "right" : "left")}");

    public static string Side(double gravities) => Math.Abs(gravities) < Straight
        ? "straight on"
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(gravities):0.00} g to the {(gravities > 0 ? "right" : "left")}");

    public static string Road(Manoeuvre manoeuvre) => GaugeRoad.Of(manoeuvre).Name;

    public static string Minutes(RemedyRow row) => row.LevelMinutes is { } m ? string.Create(CultureInfo.InvariantCulture, $"{m:0.0} min") : "not in 2 h";
}
