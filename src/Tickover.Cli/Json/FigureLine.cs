using Tickover.Workshop.Cars;

namespace Tickover.Cli.Json;

/// <summary>One figure with where it comes from.</summary>
/// <param name="Key">Its key, as used after --set.</param>
/// <param name="Label">The trade's name.</param>
/// <param name="Part">The part it belongs to.</param>
/// <param name="Si">Value in SI units.</param>
/// <param name="Shown">Value as the workshop reads it.</param>
/// <param name="Origin">Class of origin.</param>
/// <param name="Note">Where it comes from, a sentence.</param>
internal sealed record FigureLine(string Key, string Label, string Part, double Si, string Shown, OriginKind Origin, string Note)
{
    /// <summary>The line of a figure.</summary>
    /// <param name="figure">The figure.</param>
    /// <returns>The line.</returns>
    public static FigureLine Of(Figure figure) => new(
        figure.Definition.Key,
        figure.Definition.Label,
        figure.Definition.Part,
        figure.Si,
        FigureText.Show(figure),
        figure.Origin.Kind,
        figure.Origin.Note);
}
