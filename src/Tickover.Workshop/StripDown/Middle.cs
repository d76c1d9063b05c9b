namespace Tickover.Workshop.StripDown;

/// <summary>The middle of a set, so that one that is off does not make all others look wrong.</summary>
internal static class Middle
{
    /// <summary>The middle value.</summary>
    /// <param name="values">One or more values.</param>
    /// <returns>The one in the middle, or the mean of the two there.</returns>
    public static double Of(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2;
    }
}
