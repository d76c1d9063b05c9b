using Tickover.Workshop.Visits;

namespace Tickover.Reports.HandOver;

/// <summary>One step of filling the tanks: what is in them, and where the needle stands.</summary>
/// <param name="Needle">Place of the needle, E (0) to F (1).</param>
/// <param name="Volume">What is in all tanks together, m³.</param>
internal readonly record struct StrappingStep(double Needle, double Volume)
{
    private const string Litres = "strappingLitres";
    private const string NeedleKey = "strappingNeedle";

    /// <summary>The steps of a visit, from the fullest down.</summary>
    /// <remarks>
    /// Readings of one round are one step; readings outside of rounds are paired in the order they were kept. Within a step each tank counts with its
    /// last reading; a tank not read in a step still holds what it held before.
    /// </remarks>
    internal static IReadOnlyList<StrappingStep> Of(IReadOnlyList<Reading> valid)
    {
        var readings = valid.Where(r => r is { Si: not null, Measure: Litres or NeedleKey }).ToList();
        Dictionary<Place, double> tanks = [];
        List<StrappingStep> steps = [];
        foreach (var step in Steps(readings))
        {
            foreach (var filled in step.Where(r => string.Equals(r.Measure, Litres, StringComparison.Ordinal)))
            {
                tanks[filled.Place] = filled.Si!.Value;
            }

            if (step.LastOrDefault(r => string.Equals(r.Measure, NeedleKey, StringComparison.Ordinal)) is { } needle && tanks.Count > 0)
            {
                steps.Add(new StrappingStep(needle.Si!.Value, tanks.Values.Sum()));
            }
        }

        return [.. steps.OrderByDescending(s => s.Volume)];
    }

    private static IEnumerable<IReadOnlyList<Reading>> Steps(List<Reading> readings)
    {
        foreach (var round in readings.Where(r => r.Round is not null).GroupBy(r => r.Round))
        {
            yield return [.. round];
        }

        // Outside of rounds a reading of the needle closes a step
        List<Reading> open = [];
        foreach (var reading in readings.Where(r => r.Round is null))
        {
            open.Add(reading);
            if (string.Equals(reading.Measure, NeedleKey, StringComparison.Ordinal))
            {
                yield return open;
                open = [];
            }
        }
    }
}
