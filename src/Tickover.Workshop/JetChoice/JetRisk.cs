using Tickover.Workshop.Calibration;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.JetChoice;

/// <summary>What it costs to be off target: out of the band by how likely and how far, lean dearer than rich, dearest at full load. docs/jet-choice.md.</summary>
internal static class JetRisk
{
    private const double Far = 0.05;                      // of λ beyond the band: counts as much again as being out at all

    /// <summary>Expected cost at a point.</summary>
    /// <param name="logLambda">Expected logarithm of λ.</param>
    /// <param name="deviation">Its standard deviation.</param>
    /// <param name="band">The target.</param>
    internal static double Of(double logLambda, double deviation, LambdaBand band)
    {
        var s = Math.Max(deviation, 1e-4);
        var (lean, rich) = ((logLambda - Math.Log(band.Leanest)) / s, (Math.Log(band.Richest) - logLambda) / s);
        return LeanFactor(band.Regime) * One(lean, s) + One(rich, s);
    }

    /// <summary>Probability of being in the band.</summary>
    internal static double InBand(double logLambda, double deviation, LambdaBand band)
    {
        var s = Math.Max(deviation, 1e-4);
        return Normal.Below((Math.Log(band.Leanest) - logLambda) / s) - Normal.Below((Math.Log(band.Richest) - logLambda) / s);
    }

    // Probability of being beyond, and the expected distance beyond in units of Far.
    private static double One(double z, double s)
    {
        var beyond = Normal.Below(z);
        return beyond + s * (Normal.Density(z) + z * beyond) / Far;
    }

    // A lean full load burns pistons, a rich one burns petrol: common practice.
    private static double LeanFactor(string regime) => regime switch
    {
        "full load" => 4,
        "cruise" => 1.5,
        _ => 1.2,
    };
}
