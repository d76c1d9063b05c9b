using System.Globalization;

namespace Tickover.Kill;

/// <summary>What came of killing a writer over and over.</summary>
/// <param name="Kills">How often.</param>
/// <param name="Acknowledged">Acts that the writers said were kept.</param>
/// <param name="Lost">Those of them that the record does not hold.</param>
/// <param name="Half">Acts of which the record holds only a part.</param>
/// <param name="Gaps">Numbers missing in the journal.</param>
/// <param name="Unacknowledged">Acts kept whose acknowledgement was killed on its way; sent again they are kept once.</param>
/// <param name="HealthySeconds">Seconds from each kill until the record was opened, checked, read and written again.</param>
public sealed record KillResult(int Kills, long Acknowledged, long Lost, long Half, long Gaps, long Unacknowledged, IReadOnlyList<double> HealthySeconds)
{
    /// <summary>Nothing acknowledged lost, nothing half kept, and healthy within two seconds each time.</summary>
    public bool IsGood => Lost == 0 && Half == 0 && Gaps == 0 && Acknowledged > Kills && HealthySeconds.Max() <= 2;

    public string Words
    {
        get
        {
            var sorted = HealthySeconds.Order().ToList();
            return string.Create(
                CultureInfo.InvariantCulture,
                $"{Kills} kills, {Acknowledged} acts acknowledged, {Lost} lost, {Half} half kept, {Gaps} gaps, {Unacknowledged} kept without the acknowledgement coming through; healthy again after {sorted[sorted.Count / 2]:F2} s (median), {sorted[^1]:F2} s (longest)");
        }
    }
}
