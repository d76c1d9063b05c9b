using System.Globalization;
using Microsoft.AspNetCore.Components;
using Tickover.Reports;

namespace Tickover.Web.Mixture;

/// <summary>The map on which a place is tapped.</summary>
public partial class TappedMap
{
    // Without scripts every sixth speed and every fourth opening is a link: enough to walk the map by.
    private const int SpeedsSkipped = 6;
    private const int OpeningsSkipped = 4;

    /// <summary>What is on the bench.</summary>
    [Parameter, EditorRequired]
    public Bench Bench { get; set; } = default!;

    /// <summary>Address of the page it stands on, without the query.</summary>
    [Parameter, EditorRequired]
    public string Page { get; set; } = "";

    private double SpeedStep
    {
        get
        {
            var speeds = Bench.FittedMap.Grid.SpeedsRpm;
            return speeds.Count > 1 ? (speeds[^1] - speeds[0]) / (speeds.Count - 1) : 1;
        }
    }

    private IEnumerable<(double Rpm, double Throttle, string Words)> Places =>
        from throttle in Bench.FittedMap.Grid.ThrottleDegrees.Where((_, i) => i % OpeningsSkipped == OpeningsSkipped - 1)
        from rpm in Bench.FittedMap.Grid.SpeedsRpm.Where((_, i) => i % SpeedsSkipped == SpeedsSkipped / 2)
        select (rpm, throttle, $"{Shown.SpeedWithUnit(rpm)}, {Shown.Opening(throttle)}");

    private static string Number(double? value) => (value ?? 0).ToString("0.##", CultureInfo.InvariantCulture);
}
