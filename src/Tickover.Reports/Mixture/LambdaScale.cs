using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>The span of λ that the map's colours cover; fitted and trial share one.</summary>
/// <param name="Richest">λ of the darkest colour, 1.</param>
/// <param name="Leanest">λ of the lightest colour, 1.</param>
public sealed record LambdaScale(double Richest, double Leanest)
{
    /// <summary>λ below which no petrol engine gives an answer worth a colour of its own, 1.</summary>
    public const double RichestShown = 0.70;

    /// <summary>λ above which it does not, 1.</summary>
    public const double LeanestShown = 1.30;

    // A flat field still wants a bar with two figures on it
    private const double LeastSpan = 0.10;
    private const double Rounding = 0.01;

    /// <summary>The scale that covers every answer of the maps given, within 0.70 and 1.30.</summary>
    /// <param name="maps">The maps that share the scale.</param>
    /// <returns>The scale; 0.70 to 1.30 where there is no answer at all.</returns>
    public static LambdaScale For(params IEnumerable<BarrelMap> maps)
    {
        ArgumentNullException.ThrowIfNull(maps);
        var answers = maps.SelectMany(m => m.AllPoints()).Where(NoAnswer.HasAnswer)
            .Select(p => Math.Clamp(p.Lambda, RichestShown, LeanestShown)).ToArray();
        if (answers.Length == 0)
        {
            return new LambdaScale(RichestShown, LeanestShown);
        }

        var low = Math.Floor(answers.Min() / Rounding) * Rounding;
        var high = Math.Ceiling(answers.Max() / Rounding) * Rounding;
        var missing = Math.Max(0, LeastSpan - (high - low));
        return new LambdaScale(low - missing / 2, high + missing / 2);
    }

    /// <summary>Where a λ lies on the scale: 0 at the richest, 1 at the leanest, beyond them the end.</summary>
    /// <param name="lambda">λ, 1.</param>
    /// <returns>The part of the scale.</returns>
    public double PartOf(double lambda) => Math.Clamp((lambda - Richest) / (Leanest - Richest), 0, 1);
}
