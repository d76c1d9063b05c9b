using System.Text.RegularExpressions;
using Tickover.Workshop.Cars;

namespace Tickover.Cli.Input;

/// <summary>Reads the day and the place in one go: "30 °C, 1500 m, 40 %".</summary>
internal static partial class AmbientText
{
    /// <summary>Sorts the parts by their units onto the ambient figures of a car.</summary>
    /// <param name="text">As typed. A comma parts only before a blank, so that "30,5 °C" stays whole.</param>
    /// <param name="ambient">The car's ambient figures.</param>
    /// <returns>Changes by path and text, or a complaint.</returns>
    public static Answer<IReadOnlyList<CarChange>> Read(string text, FigureSet ambient)
    {
        var changes = new List<CarChange>();
        foreach (var part in Separator().Split(text.Trim()))
        {
            var figure = ambient.FirstOrDefault(f => FigureText.TryParse(f.Definition.Measure, part, out _));
            if (figure is null)
            {
                return Answer<IReadOnlyList<CarChange>>.No(
                    $"--ambient {text}: '{part}' is none of {string.Join(", ", ambient.Select(Sample))}. Write it as \"30 °C, 1500 m, 40 %\".");
            }

            if (Changes(changes, figure))
            {
                return Answer<IReadOnlyList<CarChange>>.No($"--ambient {text}: {figure.Definition.Label} is given twice. Give it once.");
            }

            changes.Add(new CarChange(figure.Definition.Key, part));
        }

        return BarometerAway(changes, ambient);
    }

    /// <summary>A height asked for sets the pressure, so a barometer read elsewhere must not stand in its way.</summary>
    private static List<CarChange> BarometerAway(List<CarChange> changes, FigureSet ambient)
    {
        var pressure = ambient.FirstOrDefault(f => f.Definition.Measure == Measure.Pressure);
        var height = ambient.FirstOrDefault(f => f.Definition.Measure == Measure.Altitude);
        return pressure?.Origin.Kind == OriginKind.Given && height is not null
            && Changes(changes, height) && !Changes(changes, pressure)
                ? [new CarChange(pressure.Definition.Key, string.Empty), .. changes]
                : changes;
    }

    private static bool Changes(List<CarChange> changes, Figure figure) =>
        changes.Exists(c => string.Equals(c.Path, figure.Definition.Key, StringComparison.Ordinal));

    private static string Sample(Figure figure) => $"{figure.Definition.Label} ({FigureText.Form(figure.Definition.Measure)})";

    [GeneratedRegex(@"\s*(?:;|,(?=\s))\s*", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 100)]
    private static partial Regex Separator();
}
