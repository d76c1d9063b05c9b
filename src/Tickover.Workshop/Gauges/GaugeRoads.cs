using Tickover.Physics.Sending;
using Tickover.Workshop.Gauges.Reading;

namespace Tickover.Workshop.Gauges;

/// <summary>Standard manoeuvres to put any pair of tanks on.</summary>
public static class GaugeRoads
{
    /// <summary>Manoeuvres by their names in addresses and for people.</summary>
    public static IReadOnlyDictionary<string, string> Known { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["roundabouts"] = "Roundabout, one way then the other",
        ["circle"] = "Steady circle (ISO 4138)",
        ["lane change"] = "Lane change (ISO 3888-1)",
        ["avoidance"] = "Avoidance (ISO 3888-2)",
    };

    /// <summary>A story on another road.</summary>
    /// <param name="story">The story.</param>
    /// <param name="road">A name in <see cref="Known"/>; anything else leaves the story's own road.</param>
    /// <returns>The story on that road.</returns>
    public static GaugeStory On(GaugeStory story, string? road)
    {
        ArgumentNullException.ThrowIfNull(story);
        return road is not null && Known.ContainsKey(road)
            ? story with { RoadName = road, Road = RoadReader.Manoeuvre(road, new RoadFigures(1, SpeedGiven: false, null, 1.5, 25, 1.7, ToLeft: true)) }
            : story;
    }

    /// <summary>A story on a recorded drive.</summary>
    /// <param name="story">The story.</param>
    /// <param name="trace">The drive.</param>
    /// <returns>The story on it.</returns>
    public static GaugeStory On(GaugeStory story, RoadTrace trace)
    {
        ArgumentNullException.ThrowIfNull(story);
        return story with { RoadName = "recorded drive", Road = trace };
    }
}
