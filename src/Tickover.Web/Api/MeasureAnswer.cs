using Tickover.Workshop.Visits.Measures;

namespace Tickover.Web.Api;

/// <summary>Something that can be measured on a visit.</summary>
/// <param name="Key">Its key, as a reading names it.</param>
/// <param name="Label">What it is.</param>
/// <param name="Stages">The stages it belongs to.</param>
/// <param name="Per">What it is taken of, such as "Barrel".</param>
/// <param name="SiUnit">Unit of the value in a reading.</param>
/// <param name="Choices">The words to choose from; empty for figures.</param>
public sealed record MeasureAnswer(string Key, string Label, IReadOnlyList<string> Stages, string Per, string SiUnit, IReadOnlyList<string> Choices)
{
    internal static MeasureAnswer Of(MeasureDefinition measure) =>
        new(measure.Key, measure.Label, [.. measure.Stages.Select(s => s.ToString())], measure.Per.ToString(), measure.SiUnit, measure.Choices);
}
