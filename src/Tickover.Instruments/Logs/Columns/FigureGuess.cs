namespace Tickover.Instruments.Logs.Columns;

/// <summary>Guesses columns by their figures alone, where no heading helps. Everything guessed says so.</summary>
internal static class FigureGuess
{
    // Common practice: engines turn at 500 to 9 000, λ lies between 0.6 and 1.6, AFR between 9 and 20.
    private static readonly (LogQuantity Quantity, Func<SampleColumn, bool> Fits, string Why)[] Rules =
    [
        (LogQuantity.Time, s => s is { Rises: true } && s.Distinct > 2, "rises from row to row"),
        (LogQuantity.EngineSpeed, s => s is { Median: > 450 and < 9500, Least: >= 0, Distinct: > 2 } && s.Most < 20_000, "figures like an engine's speed"),
        (LogQuantity.Lambda, s => s is { Median: > 0.6 and < 1.6, Least: >= 0, Distinct: > 2 } && s.Most < 10, "figures like λ"),
        (LogQuantity.Lambda, s => s is { Median: > 9.5 and < 18, Least: >= 0, Distinct: > 5 } && s.Most - s.Least > 2.5 && s.Most < 40, "figures like an air/fuel ratio"),
        (LogQuantity.ManifoldPressure, s => s is { Least: > 12, Most: < 106, Distinct: > 5 } && s.Most > 60, "figures like an absolute pressure in kPa"),
        (LogQuantity.Throttle, s => s is { Least: >= -1, Most: <= 101, Distinct: > 5 } && s.Most > 15, "figures from near nought to at most a hundred"),
    ];

    /// <summary>Fills what is still open.</summary>
    /// <param name="choices">The choices so far.</param>
    /// <param name="samples">What the columns look like.</param>
    public static void Fill(ColumnChoice[] choices, SampleColumn[] samples)
    {
        foreach (var (quantity, fits, why) in Rules)
        {
            if (choices.Any(c => c.Quantity == quantity))
            {
                continue;
            }

            var at = Array.FindIndex(choices, c => c.Quantity is LogQuantity.Ignored && c.Sureness is not HowSure.Told && !c.Why.StartsWith("says", StringComparison.Ordinal) && fits(samples[c.Index]));
            if (at >= 0)
            {
                choices[at] = choices[at] with { Quantity = quantity, Sureness = HowSure.Guess, Why = $"no heading says so: {why}" };
            }
        }
    }
}
