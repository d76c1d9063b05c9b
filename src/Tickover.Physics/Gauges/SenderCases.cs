namespace Tickover.Physics.Gauges;

/// <summary>Every explanation that is weighed, with how likely it is before any reading. docs/physics/gauges.md (8).</summary>
/// <remarks>The shares are assumptions of this project after the order of causes that is common practice.</remarks>
internal static class SenderCases
{
    private static readonly Dictionary<SenderFault, double> Shares = new()
    {
        [SenderFault.None] = 0.35,
        [SenderFault.AddedResistance] = 0.13,
        [SenderFault.WrongFamily] = 0.1,
        [SenderFault.Open] = 0.08,
        [SenderFault.StuckFloat] = 0.06,
        [SenderFault.Short] = 0.05,
        [SenderFault.FouledHigh] = 0.05,
        [SenderFault.FouledLow] = 0.04,
        [SenderFault.ReversedFloat] = 0.03,
        [SenderFault.VoltageLow] = 0.03,
        [SenderFault.VoltageHigh] = 0.03,
        [SenderFault.StuckNeedle] = 0.03,
        [SenderFault.SecondInParallel] = 0.01,
        [SenderFault.SecondInSeries] = 0.01,
    };

    private static readonly double[] Added = [5, 8, 12, 18, 27, 40, 60, 90];
    private static readonly double[] Stuck = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1];
    private static readonly double[] High = [0.35, 0.45, 0.55, 0.65, 0.75, 0.85];
    private static readonly double[] Low = [0.15, 0.25, 0.35, 0.45, 0.55, 0.65];
    private static readonly double[] Weak = [0.7, 0.75, 0.8, 0.85, 0.9];
    private static readonly double[] Strong = [1.1, 1.15, 1.2, 1.3, 1.4];

    /// <summary>All of them with their shares, which add up to one.</summary>
    public static List<(SenderCase Case, double Share)> All(SenderFamily? sender, SenderFamily? gauge)
    {
        var cases = new List<(SenderCase Case, double Share)>();
        foreach (var fault in Enum.GetValues<SenderFault>())
        {
            var pairs = Pairs(fault, sender, gauge).ToArray();
            var (amounts, places) = (Amounts(fault), Places(fault));
            var share = Shares[fault] / Math.Max(1, pairs.Length * amounts.Length * places.Length);
            cases.AddRange(
                from pair in pairs
                from amount in amounts
                from inWire in places
                select (new SenderCase(fault, pair.Sender, pair.Gauge, amount, inWire), share));
        }

        var sum = cases.Sum(c => c.Share); // a known pair leaves no room for some faults
        return [.. cases.Select(c => (c.Case, c.Share / sum))];
    }

    private static IEnumerable<(SenderFamily Sender, SenderFamily Gauge)> Pairs(SenderFault fault, SenderFamily? sender, SenderFamily? gauge) =>
        from s in SenderFamily.All
        where sender is null || s == sender
        from g in SenderFamily.All
        where gauge is null || g == gauge
        where fault == SenderFault.WrongFamily ? s != g : s == g
        select (s, g);

    private static double[] Amounts(SenderFault fault) => fault switch
    {
        SenderFault.AddedResistance => Added,
        SenderFault.StuckFloat or SenderFault.StuckNeedle => Stuck,
        SenderFault.FouledHigh => High,
        SenderFault.FouledLow => Low,
        SenderFault.VoltageLow => Weak,
        SenderFault.VoltageHigh => Strong,
        _ => [0],
    };

    private static bool[] Places(SenderFault fault) => fault switch
    {
        SenderFault.Open or SenderFault.Short or SenderFault.AddedResistance or SenderFault.SecondInParallel or SenderFault.SecondInSeries => [false, true],
        _ => [false],
    };
}
