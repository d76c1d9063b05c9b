namespace Tickover.Workshop.Mixture;

/// <summary>The λ the trade aims at over the throttle opening, common practice (trade reference 3.3).</summary>
/// <remarks>Bands change gradually between the regimes, so that the edge of target on the map is a line and not a step.</remarks>
public static class MixtureTargets
{
    // Opening in degrees: richest λ, leanest λ. Common practice; the openings follow the trade reference 3.1.
    private static readonly (double Degrees, double Richest, double Leanest)[] Knots =
    [
        (0, 0.88, 0.95),
        (12, 0.88, 0.95),
        (22, 0.92, 1.05),
        (38, 0.90, 1.03),
        (60, 0.84, 0.90),
        (90, 0.84, 0.88),
    ];

    /// <summary>The target band at a throttle opening.</summary>
    /// <param name="throttleDegrees">Plate opening from seated, degrees, 0 to 90.</param>
    /// <returns>The band, interpolated between the regimes.</returns>
    public static LambdaBand At(double throttleDegrees)
    {
        var regime = throttleDegrees switch
        {
            < 4 => "idle",
            < 17 => "progression",
            < 48 => "cruise",
            _ => "full load",
        };
        for (var i = 1; i < Knots.Length; i++)
        {
            var (low, high) = (Knots[i - 1], Knots[i]);
            if (throttleDegrees <= high.Degrees)
            {
                var t = Math.Clamp((throttleDegrees - low.Degrees) / (high.Degrees - low.Degrees), 0, 1);
                return new LambdaBand(
                    low.Richest + t * (high.Richest - low.Richest), low.Leanest + t * (high.Leanest - low.Leanest), regime);
            }
        }

        return new LambdaBand(Knots[^1].Richest, Knots[^1].Leanest, regime);
    }
}
