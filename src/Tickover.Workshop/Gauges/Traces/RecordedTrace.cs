using System.Globalization;
using Tickover.Physics.Air;
using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges.Traces;

/// <summary>Reads recorded accelerations from CSV, or a GPS track from GPX; asks where the file leaves a doubt.</summary>
public static class RecordedTrace
{
    private const double Gravity = AirConstants.StandardGravityMetresPerSecondSquared;
    private const double Step = 0.02;
    private const double LongestHours = 6;
    private const double GapSteps = 5;               // times the usual step: more is a gap
    private const double GapLeast = 0.5;             // s
    private const double HardestGravities = 1.3;     // no road tyre of these cars pulls more

    private static readonly string[] TimeNames = ["time", "t", "seconds", "time s"];
    private static readonly string[] AheadNames = ["ahead", "ax", "forward", "longitudinal", "acc x", "x"];
    private static readonly string[] LeftNames = ["left", "ay", "lateral", "sideways", "acc y", "y"];

    /// <summary>Reads a trace; never throws for what a file holds.</summary>
    /// <param name="name">Its name, to speak of it.</param>
    /// <param name="text">The file.</param>
    /// <param name="choices">What is known beside it.</param>
    /// <returns>The road or a question.</returns>
    public static TraceReading Read(string name, string text, TraceChoices choices)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(choices);
        if (text.TrimStart().StartsWith('<'))
        {
            return Fixes(name, text, choices);
        }

        var table = TraceTable.Read(text);
        if (table is null)
        {
            return TraceReading.Ask($"{name} is no table of numbers. The first line names the columns, such as time,ahead,left; times are in seconds, accelerations in m/s².");
        }

        var (time, ahead, left) = (table.Find(TimeNames), table.Find(choices.Ahead is { } a ? [a] : AheadNames), table.Find(choices.Left is { } l ? [l] : LeftNames));
        if (time is null || ahead is null || left is null || ahead == left)
        {
            return TraceReading.Ask($"{name} has the columns {string.Join(", ", table.Names)}. Which is time in seconds, which points ahead, which to the left? Name them time, ahead and left, or say --ahead COLUMN --left COLUMN.");
        }

        return Judged(name, table, (time.Value, ahead.Value, left.Value), choices);
    }

    private static TraceReading Judged(string name, TraceTable table, (int Time, int Ahead, int Left) at, TraceChoices choices)
    {
        var times = table.Column(at.Time);
        if (TimeTrouble(name, times, choices) is { } trouble)
        {
            return TraceReading.Ask(trouble);
        }

        var (ahead, left) = (table.Column(at.Ahead), table.Column(at.Left));
        var unit = choices.Unit ?? table.Unit(at.Left) ?? table.Unit(at.Ahead);
        var most = Math.Max(ahead.Max(Math.Abs), left.Max(Math.Abs));
        foreach (var (column, values) in new[] { (at.Ahead, ahead), (at.Left, left) })
        {
            var mean = Math.Abs(values.Average());
            if (mean is > 8.5 and < 11 || (mean is > 0.85 and < 1.1 && most < 3))
            {
                return TraceReading.Ask($"The column {table.Names[column]} of {name} holds gravity: it points up or down, not along the floor. Say --ahead COLUMN --left COLUMN with the two that lie level.");
            }
        }

        if (unit is null && most < HardestGravities * 1.2)
        {
            return TraceReading.Ask(string.Create(CultureInfo.InvariantCulture, $"{name} never goes beyond {most:0.00}. That is a gentle drive in m/s², or a usual one in g. Say --units g or --units m/s2."));
        }

        if (unit is TraceUnit.MetresPerSecondSquared or null && most > HardestGravities * Gravity || unit == TraceUnit.Gravities && most > HardestGravities)
        {
            return TraceReading.Ask(string.Create(CultureInfo.InvariantCulture, $"{name} goes up to {most:0.0} {(unit == TraceUnit.Gravities ? "g" : "m/s²")}: no car on the road pulls that. Check the unit, or take out what the meter did when it was handled."));
        }

        var scale = unit == TraceUnit.Gravities ? Gravity : 1;
        var note = string.Create(CultureInfo.InvariantCulture, $"{times.Length} readings over {times[^1] - times[0]:0} s, in {(unit == TraceUnit.Gravities ? "g" : "m/s²")}.");
        return new TraceReading(new GaugeRoad($"The road recorded in {name}", Even(times, ahead, left, scale)), null, [note]);
    }

    private static string? TimeTrouble(string name, double[] times, TraceChoices choices)
    {
        if (times.Length < 10)
        {
            return $"{name} has {times.Length} readings; it takes ten or more.";
        }

        var steps = times.Zip(times.Skip(1), (a, b) => b - a).ToArray();
        var back = Array.FindIndex(steps, s => s <= 0);
        if (back >= 0)
        {
            return string.Create(CultureInfo.InvariantCulture, $"The time of {name} does not rise at reading {back + 2} ({times[back + 1]:0.##} s). Put the readings in order of time, each time once.");
        }

        var usual = steps.Order().ElementAt(steps.Length / 2);
        if (usual > 1)
        {
            return string.Create(CultureInfo.InvariantCulture, $"The readings of {name} lie {usual:0.#} apart. If the time is in milliseconds, put it into seconds; slower than one a second says nothing about bends.");
        }

        var gaps = steps.Select((s, i) => (Long: s, At: times[i])).Where(g => g.Long > Math.Max(GapLeast, GapSteps * usual)).ToArray();
        if (gaps.Length > 0 && !choices.BridgeGaps)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{name} has {gaps.Length} gap{(gaps.Length > 1 ? "s" : "")}, the longest {gaps.Max(g => g.Long):0.0} s after {gaps.MaxBy(g => g.Long).At:0.0} s. Say --bridge-gaps to draw straight lines over them, or cut the file.");
        }

        return times[^1] - times[0] > LongestHours * 3600 ? $"{name} is longer than {LongestHours} hours; cut it." : null;
    }

    private static RoadTrace Even(double[] times, double[] ahead, double[] left, double scale)
    {
        var count = (int)Math.Floor((times[^1] - times[0]) / Step) + 1;
        var (x, y) = (new double[count], new double[count]);
        for (int i = 0, at = 0; i < count; i++)
        {
            var t = times[0] + i * Step;
            while (at < times.Length - 2 && times[at + 1] < t)
            {
                at++;
            }

            var part = Math.Clamp((t - times[at]) / (times[at + 1] - times[at]), 0, 1);
            x[i] = scale * (ahead[at] + part * (ahead[at + 1] - ahead[at]));
            y[i] = scale * (left[at] + part * (left[at + 1] - left[at]));
        }

        return new RoadTrace(Step, x, y);
    }

    private static TraceReading Fixes(string name, string text, TraceChoices choices)
    {
        var track = GpsTrack.Read(text);
        if (track is null)
        {
            return TraceReading.Ask($"{name} holds no track with ten timed points (trkpt with lat, lon and time).");
        }

        return TimeTrouble(name, track.Times, choices) is { } trouble
            ? TraceReading.Ask(trouble)
            : new TraceReading(
                new GaugeRoad($"The road recorded in {name}", Even(track.Times, track.Ahead, track.Left, 1)),
                null,
                ["Accelerations from the track's speed and bends, smoothed over three seconds: sharp bends come out weaker than they were, slope and camber are not in it."]);
    }
}
