namespace Tickover.Cli.Json;

/// <summary>One change.</summary>
/// <param name="Part">Name of the part in a car's document.</param>
/// <param name="Label">The trade's name.</param>
/// <param name="From">What is fitted.</param>
/// <param name="To">What to fit or set.</param>
/// <param name="Pieces">Pieces wanted; zero for a setting.</param>
/// <param name="ToOrder">Pieces the shelf is short of.</param>
/// <param name="Effects">What it does to λ by regime, as a part of it.</param>
internal sealed record ProposedChange(
    string Part, string Label, string From, string To, int Pieces, int ToOrder, IReadOnlyDictionary<string, double> Effects);
