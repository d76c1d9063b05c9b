using Tickover.Workshop.JetChoice;

namespace Tickover.Reports.Fits;

/// <summary>How far the readings of one regime and bank lie off the fit together.</summary>
/// <param name="Regime">The regime in words.</param>
/// <param name="Bank">Bank from 1; 0 where one probe sees all.</param>
/// <param name="Count">Readings.</param>
/// <param name="Mean">Mean of measured less fitted λ.</param>
/// <param name="Error">90 % band of that mean to either side, taking the readings as independent of each other.</param>
/// <param name="Outside">Readings outside their own 90 % band.</param>
internal sealed record RegimeBias(string Regime, int Bank, int Count, double Mean, double Error, int Outside)
{
    /// <summary>Whether the mean is further off than chance explains.</summary>
    internal bool IsBias => Count > 2 && Math.Abs(Mean) > Error;

    internal static IReadOnlyList<RegimeBias> Of(IReadOnlyList<Residual> residuals) =>
    [
        .. from regime in JetTargets.Regimes
           from bank in residuals.Select(r => r.Bank).Distinct().Order()
           let here = residuals.Where(r => string.Equals(r.Regime, regime, StringComparison.Ordinal) && r.Bank == bank).ToList()
           where here.Count > 0
           select new RegimeBias(
               regime, bank, here.Count, here.Average(r => r.Off), Math.Sqrt(here.Sum(r => r.Half * r.Half)) / here.Count, here.Count(r => r.IsOutside)),
    ];
}
