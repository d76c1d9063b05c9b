namespace Tickover.Workshop.Logs;

/// <summary>What one fast opening of the throttle says of the accelerator pump.</summary>
public sealed record TipInJudgement
{
    /// <summary>The verdict.</summary>
    public required TipInVerdict Verdict { get; init; }

    /// <summary>What the trace shows, with its numbers: a sentence.</summary>
    public required string Words { get; init; }

    /// <summary>What to do, in order; sentences. One change at a time.</summary>
    public IReadOnlyList<string> Advice { get; init; } = [];

    /// <summary>What this trace cannot tell: sentences.</summary>
    public IReadOnlyList<string> Open { get; init; } = [];

    /// <summary>When the throttle begins to open, s; null where it does not.</summary>
    public double? OpeningSeconds { get; init; }

    /// <summary>λ before; null where it could not be taken.</summary>
    public double? LambdaBefore { get; init; }

    /// <summary>λ once settled; null likewise.</summary>
    public double? LambdaSettled { get; init; }

    /// <summary>The lean spike; null where there is none.</summary>
    public TipInExcursion? Lean { get; init; }

    /// <summary>The rich dip; null where there is none.</summary>
    public TipInExcursion? Rich { get; init; }

    /// <summary>Fuel missing in the lean spike at all barrels of the probe, g; zero where there is none.</summary>
    public double DeficitGrams => Lean?.Grams ?? 0;

    /// <summary>Half the band of <see cref="DeficitGrams"/>, g: filling and sensor.</summary>
    public double DeficitBandGrams { get; init; }

    /// <summary>Shot a barrel would need, cm³: the measured one and what is missing or too much; null where the shot was not measured.</summary>
    public double? NeededShot { get; init; }

    /// <summary>Fuel the walls took for each unit of rise in flow (X τ), s; null likewise. Warm films have 0.02 to 0.8.</summary>
    public double? FilmSeconds { get; init; }

    /// <summary>Judges a trace.</summary>
    /// <param name="trace">The trace, with the opening in it; of several openings the fastest counts.</param>
    /// <param name="engine">The engine before the probe.</param>
    /// <returns>The judgement; a trace that cannot be used gives <see cref="TipInVerdict.CannotTell"/> with the reason.</returns>
    /// <exception cref="ArgumentException">A figure of the engine is not finite and above zero.</exception>
    public static TipInJudgement Of(TipInTrace trace, TipInEngine engine)
    {
        ArgumentNullException.ThrowIfNull(trace);
        ArgumentNullException.ThrowIfNull(engine);
        if (!engine.IsPossible)
        {
            throw new ArgumentException("Swept volume, barrels, fillings, densities and ratio must be finite and above zero.", nameof(engine));
        }

        if (trace.Unusable() is { } unusable)
        {
            return No(unusable);
        }

        var window = TipInWindow.Find(trace);
        if (window.Rise < TipInLimits.SlowDegrees)
        {
            return No("No opening of the throttle in it: open it fast, in gear, from light running, and hold it.");
        }

        if (window.Rise < TipInLimits.OpeningDegrees)
        {
            return Slow(trace, window);
        }

        return window.Measure() is { } reason ? No(reason) : TipInWeighing.Weigh(trace, window, engine);
    }

    private static TipInJudgement No(string reason) => new() { Verdict = TipInVerdict.CannotTell, Words = reason };

    private static TipInJudgement Slow(TipInTrace trace, TipInWindow window) => new()
    {
        Verdict = TipInVerdict.SlowOpening,
        Words = FormattableString.Invariant($"Opened by {window.Rise:0}° in {TipInLimits.OpeningSeconds} s: too slow to ask the pump."),
        Advice = ["A stumble on a slow opening belongs to progression and idle jet, not to the pump. Open by 15° and more in half a second to judge the pump."],
        OpeningSeconds = trace.Seconds[window.Start],
    };
}
