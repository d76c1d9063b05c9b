namespace Tickover.Workshop.Gauges;

/// <summary>What two linked tanks and their gauge do on a road, and what helps.</summary>
/// <param name="Setup">The tanks.</param>
/// <param name="Film">The drive as found.</param>
/// <param name="Remedies">Every remedy on the same road, as found first.</param>
/// <param name="Headline">The worst of it in one sentence.</param>
/// <param name="Answers">Three questions kept apart, each with its answer.</param>
public sealed record GaugeAnalysis(
    GaugeSetup Setup, GaugeFilm Film, IReadOnlyList<RemedyRow> Remedies, string Headline, IReadOnlyList<(string Question, string Answer)> Answers);
