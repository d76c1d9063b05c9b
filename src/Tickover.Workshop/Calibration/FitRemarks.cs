using System.Globalization;

namespace Tickover.Workshop.Calibration;

/// <summary>What the readings cannot tell, and what stands out.</summary>
internal static class FitRemarks
{
    private const double TooAlike = 0.8;                  // correlation beyond which two unknowns stand for each other
    private const double Astonishing = 2.5;               // prior deviations
    private const double Ignored = 0.5;

    internal static IReadOnlyList<string> Of(FittedUnknown[] unknowns, double[,] covariance, double[] weights)
    {
        var c = CultureInfo.InvariantCulture;
        var remarks = new List<string>();
        var silent = unknowns.Where(u => !u.IsTold).Select(u => u.Unknown.Label).ToArray();
        if (silent.Length > 0)
        {
            remarks.Add($"These readings say next to nothing of: {string.Join("; ", silent)}. There the prior stands.");
        }

        for (var i = 0; i < unknowns.Length; i++)
        {
            for (var j = i + 1; j < unknowns.Length; j++)
            {
                var together = covariance[i, j] / Math.Sqrt(covariance[i, i] * covariance[j, j]);
                if (Math.Abs(together) > TooAlike)
                {
                    remarks.Add(string.Create(c, $"They cannot tell {unknowns[i].Unknown.Label} from {unknowns[j].Unknown.Label} (correlation {together:0.00})."));
                }
            }
        }

        remarks.AddRange(unknowns.Where(u => Math.Abs(u.Value) > Astonishing * u.Unknown.PriorDeviation).Select(u =>
            $"{u.Unknown.Label} comes out far from what is usual: check the jets named, the level and the sensor before you believe it."));
        var light = weights.Count(w => w < Ignored);
        if (light > 0)
        {
            remarks.Add(string.Create(c, $"{light} of {weights.Length} readings lie far from the rest and count less."));
        }

        return remarks;
    }
}
