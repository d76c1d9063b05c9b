namespace Tickover.Workshop.Visits.Measures;

/// <summary>What an instrument is good to, for one measure.</summary>
/// <param name="Si">A fixed amount in the measure's SI unit; 0 where there is none.</param>
/// <param name="PartOfReading">A part of the reading; 0 where there is none.</param>
public sealed record Accuracy(double Si, double PartOfReading)
{
    /// <summary>Half the width of the band about a reading.</summary>
    /// <param name="readingSi">The reading, in the measure's SI unit.</param>
    /// <returns>The amount in SI: the wider of the two.</returns>
    public double Of(double readingSi) => Math.Max(Si, PartOfReading * Math.Abs(readingSi));
}
