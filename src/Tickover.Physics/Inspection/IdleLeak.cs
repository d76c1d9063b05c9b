using Tickover.Physics.Flow;

namespace Tickover.Physics.Inspection;

/// <summary>What a leak behind the plate passes at idle: the mean over a cycle of the pressure there.</summary>
public static class IdleLeak
{
    /// <summary>Through a narrow gap.</summary>
    /// <param name="gap">The gap.</param>
    /// <param name="outside">Air outside.</param>
    /// <param name="behindPascals">Absolute pressure behind the plate over a cycle, evenly spaced, Pa; one or more.</param>
    /// <returns>kg/s, with the worst that the formula is worth over the cycle.</returns>
    public static (double KilogramsPerSecond, Validity Validity) Through(NarrowGap gap, GasState outside, IReadOnlyList<double> behindPascals)
    {
        ArgumentNullException.ThrowIfNull(gap);
        ArgumentNullException.ThrowIfNull(behindPascals);
        var (sum, validity) = (0.0, Validity.Inside);
        foreach (var behind in behindPascals)
        {
            var (flow, worth) = gap.Flow(outside, behind);
            (sum, validity) = (sum + flow, validity.And(worth));
        }

        return (sum / behindPascals.Count, validity); // inspection (26)
    }

    /// <summary>Through a plain opening, either way: where the pressure behind rises above the air's it blows back.</summary>
    /// <param name="effectiveArea">Area times discharge coefficient, m²; not negative.</param>
    /// <param name="outside">Air outside.</param>
    /// <param name="behindPascals">Absolute pressure behind the plate over a cycle, evenly spaced, Pa; one or more.</param>
    /// <returns>kg/s.</returns>
    public static double Through(double effectiveArea, GasState outside, IReadOnlyList<double> behindPascals)
    {
        ArgumentNullException.ThrowIfNull(behindPascals);
        var orifice = new CompressibleOrifice { EffectiveAreaSquareMetres = Precondition.NotNegative(effectiveArea) };
        return behindPascals.Sum(p => orifice.MassFlow(outside, outside with { PressurePascals = p })) / behindPascals.Count; // inspection (26)
    }
}
