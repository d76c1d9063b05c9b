using Tickover.Workshop.Gauges.Reading;

namespace Tickover.Workshop.Gauges;

/// <summary>Reads a recorded drive: a CSV of accelerations or a GPX track. Gaps, wrong axes and values in g are recognised and asked about, never silently taken.</summary>
public static class TraceReader
{
    /// <summary>Reads a drive; never throws for what somebody recorded.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="units">What accelerations are in, "m/s2" or "g"; null: not said.</param>
    /// <param name="axes">Columns ahead, left and up, such as "-y,x,z"; null: ax, ay and az.</param>
    /// <returns>The drive, or what is wrong.</returns>
    public static TraceReading Read(string text, string? units = null, string? axes = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (units is not (null or "m/s2" or "g"))
        {
            return new TraceReading(null, $"--units is m/s2 or g, not {units}.");
        }

        return text.AsSpan().TrimStart().StartsWith("<") ? GpxTrace.Read(text) : AccelerationTrace.Read(text, units, axes);
    }
}
