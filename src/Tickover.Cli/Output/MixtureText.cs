using System.Globalization;
using System.Text;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Cli.Output;

/// <summary>The map as a person reads it: the verdict, a small map, a table.</summary>
/// <param name="width">Columns to fill.</param>
/// <param name="colours">Colours of the small map.</param>
internal sealed class MixtureText(int width, TerminalColours colours)
{
    // Of fewer speeds or openings the table alone is the better picture.
    private const int FewestForPicture = 6;
    private const double Percent = 100;

    /// <summary>Writes it.</summary>
    /// <param name="result">What was computed.</param>
    /// <returns>The text.</returns>
    public string Text(MixtureResult result)
    {
        var text = new StringBuilder();
        var day = string.Join(", ", result.Car.Ambient.Select(f => $"{f.Definition.Label.ToLowerInvariant()} {WrappedText.Whole(FigureText.Show(f))}"));
        WrappedText.Append(text, width, string.Empty, $"{result.Car.Name}, fuel {result.Car.FuelGrade}, {day}.");
        text.AppendLine(string.Create(
            CultureInfo.InvariantCulture,
            $"Every λ ±{result.Fitted.RelativeBand * Percent:0} %: computed from the description, not fitted to readings of this car."));
        foreach (var group in result.Groups)
        {
            Append(text, result, group);
        }

        text.AppendLine().AppendLine(LambdaTable.Legend);
        return text.ToString();
    }

    private static string LookFirst(FurthestPoint point) => point.Beyond == 0
        ? "Within target wherever the engine runs."
        : string.Create(
            CultureInfo.InvariantCulture,
            $"Look first round {point.SpeedRpm:0} rpm and {point.ThrottleDegrees:0.0}°: {Math.Abs(point.Beyond):0.00} too {(point.Beyond > 0 ? "lean" : "rich")} there.");

    private void Append(StringBuilder text, MixtureResult result, IReadOnlyList<int> group)
    {
        var words = AlikeBarrels.Words(group);
        if (result.Trial is not { } trial)
        {
            AppendMap(text, words, result.Fitted, group[0]);
            return;
        }

        AppendMap(text, $"{words}, as fitted", result.Fitted, group[0]);
        AppendMap(text, $"{words}, trial: {string.Join(", ", result.Changes.Select(c => $"{c.Path} {c.Text}"))}", trial, group[0]);
        text.AppendLine().AppendLine(CultureInfo.InvariantCulture, $"{words}, trial less fitted");
        text.Append(new LambdaTable(trial, group[0], width).Difference(result.Fitted));
    }

    private void AppendMap(StringBuilder text, string title, MixtureMap map, int number)
    {
        text.AppendLine().AppendLine(title);
        if (map.Grid.SpeedsRpm.Count >= FewestForPicture && map.Grid.ThrottleDegrees.Count >= FewestForPicture)
        {
            text.Append(TerminalMap.Picture(map, number, width, colours)).AppendLine();
        }

        text.Append(new LambdaTable(map, number, width).Text());
        WrappedText.Append(text, width, string.Empty, LookFirst(FurthestPoint.Of(map, number)));
    }
}
