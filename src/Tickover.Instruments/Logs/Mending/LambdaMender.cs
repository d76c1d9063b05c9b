using Tickover.Workshop.Logs;

namespace Tickover.Instruments.Logs.Mending;

/// <summary>Takes codes out of a λ channel and finds where its sensor is at its end.</summary>
internal static class LambdaMender
{
    private const float Richest = 0.5f;                  // nothing burns beyond; below are codes and a heater that is off
    private const float Leanest = 2.6f;
    private const double WarmUp = 3;                     // s of one and the same figure at the start
    private const int FewestAlike = 20;
    private const int AtTheEnd = 5;                      // samples in a row at one extreme
    private const float LeanEnd = 1.25f;                 // sensors end between 1.3 and 1.5, or later
    private const float RichEnd = 0.80f;

    /// <summary>Mends a channel.</summary>
    /// <param name="lambda">λ, NaN where missing; codes become NaN.</param>
    /// <param name="seconds">Times, s.</param>
    /// <param name="bank">Its bank.</param>
    /// <returns>The channel, codes and warm-up figures taken out.</returns>
    public static (LambdaChannel Channel, long Codes, long WarmUps) Mend(float[] lambda, IReadOnlyList<double> seconds, int? bank)
    {
        var warm = TakeOutWarmUp(lambda, seconds);
        var codes = 0L;
        for (var i = 0; i < lambda.Length; i++)
        {
            if (lambda[i] < Richest || lambda[i] > Leanest)
            {
                lambda[i] = float.NaN;
                codes++;
            }
        }

        return (new LambdaChannel
        {
            Bank = bank,
            Lambda = lambda,
            LeanLimit = End(lambda, 1) is var lean && lean >= LeanEnd ? lean - 0.002f : float.PositiveInfinity,
            RichLimit = End(lambda, -1) is var rich && rich <= RichEnd && rich > 0 ? rich + 0.002f : float.NegativeInfinity,
        }, codes, warm);
    }

    private static long TakeOutWarmUp(float[] lambda, IReadOnlyList<double> seconds)
    {
        var first = Array.FindIndex(lambda, float.IsFinite);
        if (first < 0)
        {
            return 0;
        }

        var end = first;
        while (end < lambda.Length && (lambda[end].Equals(lambda[first]) || float.IsNaN(lambda[end])))
        {
            end++;
        }

        if (end == lambda.Length || end - first < FewestAlike || seconds[end] - seconds[first] < WarmUp)
        {
            return 0;
        }

        Array.Fill(lambda, float.NaN, first, end - first);
        return end - first;
    }

    // The extreme, if the channel stays there for some samples in a row; 0 where it does not.
    private static float End(float[] lambda, int sign)
    {
        var extreme = float.NegativeInfinity;
        foreach (var value in lambda)
        {
            extreme = float.IsFinite(value) && sign * value > extreme ? sign * value : extreme;
        }

        var (run, longest) = (0, 0);
        foreach (var value in lambda)
        {
            run = sign * value >= extreme - 0.0015f ? run + 1 : 0;
            longest = Math.Max(longest, run);
        }

        return longest >= AtTheEnd ? sign * extreme : 0;
    }
}
