namespace Tickover.Physics.Supply;

/// <summary>Which look at a line is expected to tell most about what is wrong with it.</summary>
internal static class SupplyLook
{
    // Gauss-Hermite, three points: places in standard deviations and weights.
    private static readonly (double Place, double Weight)[] Points = [(-Math.Sqrt(3), 1.0 / 6), (0, 2.0 / 3), (Math.Sqrt(3), 1.0 / 6)];

    // How likely the answer is yes under each fault; a fault left out answers no. Nineteen times in twenty the look is right: assumed.
    private static readonly Dictionary<SupplyCheckKind, SupplyFaultKind[]> Yes = new()
    {
        [SupplyCheckKind.OpenFillerCap] = [SupplyFaultKind.VentStopped],
        [SupplyCheckKind.LookForBubbles] = [SupplyFaultKind.AirLeak],
        [SupplyCheckKind.ShutBehindPump] = [SupplyFaultKind.FloatValveLeaks, SupplyFaultKind.None],
        [SupplyCheckKind.ShutReturn] = [SupplyFaultKind.ReturnWide],
        [SupplyCheckKind.FeedFromCan] = [SupplyFaultKind.SuctionRestricted, SupplyFaultKind.VentStopped, SupplyFaultKind.AirLeak],
    };

    private const double Right = 0.95;

    public static (SupplyCheckKind Check, double Bits) Best(List<SupplyCase> cases, IReadOnlyDictionary<SupplyReadingKind, double> readings)
    {
        var readable = cases[0].Forecast.Keys.Where(kind => !readings.ContainsKey(kind)).Select(kind => ((SupplyCheckKind)(int)kind, Told(cases, kind)));
        var lookable = Yes.Where(look => look.Key != SupplyCheckKind.ShutReturn || cases.Exists(one => one.Kind == SupplyFaultKind.ReturnWide))
            .Select(look => (look.Key, Told(cases, look.Value)));
        return readable.Concat(lookable).MaxBy(look => look.Item2);
    }

    // Expected fall of the entropy over the faults.
    private static double Told(List<SupplyCase> cases, SupplyReadingKind kind)
    {
        var after = 0.0;
        foreach (var one in cases)
        {
            foreach (var (place, weight) in Points)
            {
                var value = one.Forecast[kind] + place * one.Error(kind);
                after += one.Weight * weight * Entropy(cases, other => Math.Exp(other.LogDensity(kind, value)));
            }
        }

        return Entropy(cases, _ => 1) - after; // supply (34)
    }

    private static double Told(List<SupplyCase> cases, SupplyFaultKind[] yes)
    {
        double Likely(SupplyCase one) => yes.Contains(one.Kind) ? Right : 1 - Right;
        var chance = cases.Sum(one => one.Weight * Likely(one));
        return Entropy(cases, _ => 1) - chance * Entropy(cases, Likely) - (1 - chance) * Entropy(cases, one => 1 - Likely(one)); // supply (34)
    }

    private static double Entropy(List<SupplyCase> cases, Func<SupplyCase, double> likelihood)
    {
        Span<double> faults = stackalloc double[Enum.GetValues<SupplyFaultKind>().Length];
        var sum = 0.0;
        foreach (var one in cases)
        {
            var weight = one.Weight * likelihood(one);
            faults[(int)one.Kind] += weight;
            sum += weight;
        }

        var entropy = 0.0;
        foreach (var fault in faults)
        {
            entropy -= fault > 0 ? fault / sum * Math.Log2(fault / sum) : 0;
        }

        return entropy;
    }
}
