using Tickover.Reports;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Jets;

/// <summary>Sizes as they are said aloud: turns of a screw in eighths, everything else as the document writes it.</summary>
internal static class SizeText
{
    /// <summary>A size with its unit, such as "34 mm", "55" for a jet, or "1¾ turns".</summary>
    public static string Show(Measure measure, double si) =>
        measure == Measure.Turns ? $"{Shown.Turns(si)} {FigureText.Unit(measure, si)}" : FigureText.Show(measure, si);

    /// <summary>A figure's size with its unit.</summary>
    public static string Show(Figure figure) => Show(figure.Definition.Measure, figure.Si);

    /// <summary>A size without its unit.</summary>
    public static string Number(Measure measure, double si) =>
        measure == Measure.Turns ? Shown.Turns(si) : FigureText.Number(measure, si);
}
