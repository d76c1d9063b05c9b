namespace Tickover.Workshop.Visits.Measures;

/// <summary>One place at hand-over and at the next visit, before anything was touched.</summary>
/// <param name="Place">The place.</param>
/// <param name="BeforeSi">At hand-over, in SI.</param>
/// <param name="NowSi">As found at the next visit, in SI.</param>
/// <param name="BeforeDeviation">Deviation from the mean at hand-over, as a part of it.</param>
/// <param name="NowDeviation">Deviation from the mean at the next visit, as a part of it.</param>
/// <param name="Moved">Whether it moved against the others by more than is put down to the readings.</param>
public sealed record PlaceDrift(Place Place, double BeforeSi, double NowSi, double BeforeDeviation, double NowDeviation, bool Moved)
{
    /// <summary>The change, in SI.</summary>
    public double ChangeSi => NowSi - BeforeSi;

    /// <summary>The change of its deviation, as a part of the mean: what is left once speed and weather, which move all alike, are taken out.</summary>
    public double ChangeOfDeviation => NowDeviation - BeforeDeviation;
}
