namespace Tickover.Workshop.Logs;

/// <summary>What counts as fast, settled, lean and lasting. Reasons: docs/decisions/0103-the-pump-is-judged-by-the-order-of-lean-and-rich.md.</summary>
internal static class TipInLimits
{
    /// <summary>Degrees within <see cref="OpeningSeconds"/> that make an opening a stab.</summary>
    internal const double OpeningDegrees = 15, OpeningSeconds = 0.5;

    /// <summary>Degrees from which an opening is looked at as a slow one.</summary>
    internal const double SlowDegrees = 8;

    /// <summary>Seconds looked at before and after, and from where after it λ counts as settled.</summary>
    internal const double Before = 1, After = 6, Settled = 2.5, ShortestSettled = 0.5;

    /// <summary>Slowest rows that still show a spike of a third of a second, s.</summary>
    internal const double LongestStep = 0.15;

    /// <summary>λ that counts as off, and noise from which nothing can be told, 1.</summary>
    internal const double Off = 0.03, NoisesOff = 4, TooNoisy = 0.02;

    /// <summary>A rich dip may last this long (common practice), give or take the sensor's own width, s.</summary>
    internal const double RichSeconds = 1, SensorSeconds = 0.15;

    /// <summary>λ between its former and its settled level for longer than this, the delay known, is lean too, s.</summary>
    internal const double HangingSeconds = 0.3;

    /// <summary>Richest moment of a right tip-in (common practice), λ.</summary>
    internal const double Richest = 0.75;

    /// <summary>The second excursion must be this part of the first to make a sequence, 1.</summary>
    internal const double Sequence = 0.3;

    /// <summary>A mild lean stretch beside a rich one that weighs this part of it is the shape of the shot, no fault, 1.</summary>
    internal const double Balanced = 0.5;

    /// <summary>A lean spike shorter than this wants a faster shot, a longer one more of it, s.</summary>
    internal const double RateSeconds = 0.5;

    /// <summary>λ from which sensors of the trade saturate.</summary>
    internal const double Saturated = 1.35;

    /// <summary>Half the band of λ in a transient, 1.</summary>
    internal const double LambdaBand = 0.02;

    /// <summary>X τ of warm films, s (Aquino's figures, from memory).</summary>
    internal const double LeastOwed = 0.02, MostOwed = 0.8;
}
