namespace Tickover.Workshop.Cars;

/// <summary>What a figure of a car is: its name, kind, allowed range and meaning.</summary>
/// <param name="Key">Unique key, such as <c>engine.bore</c> or <c>barrel.mainJet</c>; the last part is the name in the document.</param>
/// <param name="Label">The trade's name, such as "Main jet".</param>
/// <param name="Part">The part it belongs to, such as "Main circuit"; figures of a part stand together in a form.</param>
/// <param name="Measure">Kind of quantity.</param>
/// <param name="MinimumSi">Smallest allowed value, SI.</param>
/// <param name="MaximumSi">Largest allowed value, SI.</param>
/// <param name="Help">One sentence: what it is and how it is measured.</param>
public sealed record FigureDefinition(
    string Key, string Label, string Part, Measure Measure, double MinimumSi, double MaximumSi, string Help);
