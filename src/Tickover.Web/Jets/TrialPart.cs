using Tickover.Workshop.Cars;

namespace Tickover.Web.Jets;

/// <summary>A part that can be changed on trial and the step its sizes come in.</summary>
/// <param name="Name">Its name in the document, such as <c>idleJet</c>.</param>
/// <param name="StepSi">The step of the sizes, SI; common practice of the trade.</param>
/// <param name="What">What it feeds or does, a few words.</param>
public sealed record TrialPart(string Name, double StepSi, string What)
{
    private const double Hundredth = 1e-5;
    private const double Millimetre = 1e-3;

    /// <summary>The parts, in the order of the drawing. Steps are the trade's: jets by five numbers, chokes by a millimetre.</summary>
    public static IReadOnlyList<TrialPart> All { get; } =
    [
        new("airCorrector", 5 * Hundredth, "leans the top of the range"),
        new("mainJet", 5 * Hundredth, "feeds the main circuit"),
        new("idleJet", 5 * Hundredth, "feeds idle and progression"),
        new("idleBleed", 5 * Hundredth, "leans idle and progression"),
        new("pumpJet", 5 * Hundredth, "feeds when the throttle is opened"),
        new("choke", Millimetre, "sets the air speed over the nozzle"),
        new("floatLevel", Millimetre, "sets when the main circuit starts"),
        new("screwTurns", 0.25, "trims the idle"),
    ];

    /// <summary>The key of the figure.</summary>
    public string Key => $"barrel.{Name}";

    /// <summary>The part of a name.</summary>
    /// <param name="name">Name in the document.</param>
    /// <returns>The part, or null.</returns>
    public static TrialPart? Find(string? name) => All.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.Ordinal));

    /// <summary>The sizes offered: two either side of one, inside the allowed range.</summary>
    /// <param name="definition">The figure's definition.</param>
    /// <param name="aroundSi">The size in the middle, SI.</param>
    /// <returns>Sizes in SI, rising.</returns>
    public IReadOnlyList<double> Sizes(FigureDefinition definition, double aroundSi)
    {
        ArgumentNullException.ThrowIfNull(definition);
        return [.. Enumerable.Range(-2, 5).Select(k => aroundSi + k * StepSi).Where(s => s >= definition.MinimumSi && s <= definition.MaximumSi)];
    }
}
