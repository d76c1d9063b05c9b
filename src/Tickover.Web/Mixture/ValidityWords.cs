using Tickover.Workshop.Mixture;

namespace Tickover.Web.Mixture;

/// <summary>Says why a point is to be taken with care.</summary>
public static class ValidityWords
{
    private static readonly IReadOnlyList<(PointValidity Flag, string Words)> Sentences =
    [
        (PointValidity.NoAir, "No air passes, so there is no mixture."),
        (PointValidity.NoFuel, "No fuel flows, so there is no ratio."),
        (PointValidity.Overrun, "The engine gives no work here: the car drives it."),
        (PointValidity.TooLeanToRun, "Too lean to burn steadily: an engine does not run here."),
        (PointValidity.TooRichToRun, "Too rich to burn steadily."),
        (PointValidity.ChokeNearSonic, "The choke runs near the speed of sound."),
        (PointValidity.JetOutsideRange, "A jet runs outside the range its coefficient is known for."),
        (PointValidity.NotSettled, "The computation did not settle here. Take no figure from it."),
        (PointValidity.BeyondRatedSpeed, "Faster than the engine is meant for."),
    ];

    /// <summary>The sentences for a point.</summary>
    /// <param name="validity">Its flags.</param>
    /// <returns>The sentences; none where the point is inside every range.</returns>
    public static IReadOnlyList<string> Of(PointValidity validity) =>
        [.. Sentences.Where(s => validity.HasFlag(s.Flag)).Select(s => s.Words)];

    /// <summary>Whether a point has a mixture at all.</summary>
    /// <param name="point">The point.</param>
    /// <returns>False where λ means nothing.</returns>
    public static bool HasMixture(BarrelPoint point) =>
        (point.Validity & (PointValidity.NoAir | PointValidity.NoFuel)) == PointValidity.Inside && double.IsFinite(point.Lambda);
}
