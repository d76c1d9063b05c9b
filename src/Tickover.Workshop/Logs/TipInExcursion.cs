namespace Tickover.Workshop.Logs;

/// <summary>A stretch in which λ lies on one side of where it settles.</summary>
/// <param name="StartSeconds">When it is plainly off: by 0.03 and beyond the noise.</param>
/// <param name="EndSeconds">When it no longer is.</param>
/// <param name="Peak">λ at its furthest.</param>
/// <param name="Grams">Fuel that is missing until λ is wholly back, g; below zero where there is too much.</param>
public sealed record TipInExcursion(double StartSeconds, double EndSeconds, double Peak, double Grams)
{
    /// <summary>How long it lasts, s.</summary>
    public double Seconds => EndSeconds - StartSeconds;
}
