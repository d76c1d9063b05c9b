namespace Tickover.Workshop.Visits.Measures;

/// <summary>What a reading usually lies between; beyond it the person is asked once, never refused.</summary>
/// <param name="LowSi">Lower end in the measure's SI unit.</param>
/// <param name="HighSi">Upper end in the measure's SI unit.</param>
public sealed record PlausibleRange(double LowSi, double HighSi)
{
    /// <summary>Whether a value lies within, allowing for the rounding of a conversion.</summary>
    /// <param name="si">The value in the measure's SI unit.</param>
    /// <returns>Whether it does.</returns>
    public bool Holds(double si)
    {
        // A conversion there and back may move the last bits of a double; no instrument sees a millionth of the range.
        var slack = 1e-6 * (HighSi - LowSi);
        return si >= LowSi - slack && si <= HighSi + slack;
    }
}
