namespace Tickover.Cli.Json;

/// <summary>Barrels described alike.</summary>
/// <param name="Numbers">Their numbers.</param>
/// <param name="Figures">Their figures.</param>
internal sealed record CheckedBarrels(IReadOnlyList<int> Numbers, IReadOnlyList<FigureLine> Figures);
