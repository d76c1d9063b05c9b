using Tickover.Workshop.Visits.Measures.Units;

namespace Tickover.Workshop.Visits.Measures.Catalogue;

/// <summary>Writes lines of the catalogue. Figures are given in the metric unit shown and stored in SI.</summary>
internal static class Row
{
    public static MeasureDefinition Of(Quantity quantity, string key, string label, PlaceKind per, params IReadOnlyList<SubStep> steps)
    {
        var form = QuantityForm.Of(quantity);
        return new MeasureDefinition
        {
            Key = key,
            Label = label,
            Steps = steps,
            Per = per,
            Quantity = quantity,
            SiUnit = form.Si,
            MetricUnit = form.Metric,
            ImperialUnit = form.Imperial,
            Decimals = form.Decimals,
            ImperialDecimals = form.ImperialDecimals,
        };
    }

    public static MeasureDefinition Choice(string key, string label, PlaceKind per, IReadOnlyList<SubStep> steps, params IReadOnlyList<string> choices) =>
        Of(Quantity.Choice, key, label, per, steps) with { Choices = choices };

    public static MeasureDefinition In(this MeasureDefinition m, string metric, int decimals, string imperial, int imperialDecimals) =>
        m with { MetricUnit = metric, Decimals = decimals, ImperialUnit = imperial, ImperialDecimals = imperialDecimals };

    public static MeasureDefinition To(this MeasureDefinition m, int decimals) => m with { Decimals = decimals, ImperialDecimals = decimals };

    public static MeasureDefinition Usually(this MeasureDefinition m, double low, double high) => m with { Usual = new PlausibleRange(m.Si(low), m.Si(high)) };

    public static MeasureDefinition With(this MeasureDefinition m, string hint) => m with { Hint = hint };

    public static MeasureDefinition Setting(this MeasureDefinition m) => m with { IsSetting = true };

    public static MeasureDefinition Running(this MeasureDefinition m) => m with { EngineRuns = true };

    /// <summary>Read in rounds with the engine running, as found beside as left.</summary>
    public static MeasureDefinition Round(this MeasureDefinition m) => m with { EngineRuns = true, IsRound = true, IsSetting = true };

    public static MeasureDefinition Accept(this MeasureDefinition m, string text, string source) => m with { Limit = new MeasureLimit { Text = text, Source = source } };

    public static MeasureDefinition AtLeast(this MeasureDefinition m, double value) => m with { Limit = m.Limit! with { LowestSi = m.Si(value) } };

    public static MeasureDefinition AtMost(this MeasureDefinition m, double value) => m with { Limit = m.Limit! with { HighestSi = m.Si(value) } };

    public static MeasureDefinition OffMean(this MeasureDefinition m, double? value, double? part) =>
        m with { Limit = m.Limit! with { DeviationSi = value is { } v ? m.Si(v) : null, DeviationPart = part } };

    public static MeasureDefinition Apart(this MeasureDefinition m, double? value, double? part) =>
        m with { Limit = m.Limit! with { SpreadSi = value is { } v ? m.Si(v) : null, SpreadPart = part } };

    private static double Si(this MeasureDefinition m, double value) => QuantityUnits.Find(m.Quantity, m.MetricUnit).ToSi(value);
}
