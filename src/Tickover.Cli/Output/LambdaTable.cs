using System.Globalization;
using System.Text;
using Tickover.Workshop.Mixture;

namespace Tickover.Cli.Output;

/// <summary>λ of one barrel over speed and opening as a table: wide open at the top, as on the picture.</summary>
/// <param name="map">The map.</param>
/// <param name="number">The barrel.</param>
/// <param name="width">Columns to fill.</param>
internal sealed class LambdaTable(MixtureMap map, int number, int width)
{
    /// <summary>What the marks mean.</summary>
    public const string Legend = "+ lean of target, - rich of target, ? outside a model's range, . the engine does not run there.";

    private const int HeadingWidth = 9;
    private const int CellWidth = 6;

    private const PointValidity NoAnswer =
        PointValidity.Overrun | PointValidity.TooLeanToRun | PointValidity.TooRichToRun | PointValidity.NoAir | PointValidity.NoFuel | PointValidity.NotSettled;

    private const PointValidity Doubtful = PointValidity.ChokeNearSonic | PointValidity.JetOutsideRange | PointValidity.BeyondRatedSpeed;

    private int Stride => (int)Math.Ceiling(map.Grid.SpeedsRpm.Count / (double)Math.Max(1, (width - HeadingWidth) / CellWidth));

    /// <summary>λ with marks.</summary>
    /// <returns>The lines.</returns>
    public string Text() => Lines("λ", Cell);

    /// <summary>λ of this map less that of another on the same grid.</summary>
    /// <param name="fitted">The other.</param>
    /// <returns>The lines.</returns>
    public string Difference(MixtureMap fitted) => Lines("Δλ", (i, j) => Change(fitted.ForBarrel(number).Points[i, j], map.ForBarrel(number).Points[i, j]));

    private string Lines(string heading, Func<int, int, string> cell)
    {
        var (speeds, openings) = (map.Grid.SpeedsRpm, map.Grid.ThrottleDegrees);
        var shown = Enumerable.Range(0, speeds.Count).Where(i => i % Stride == 0).ToArray();
        var text = new StringBuilder();
        for (var j = openings.Count - 1; j >= 0; j--)
        {
            text.Append((openings[j].ToString("0.0", CultureInfo.InvariantCulture) + "°").PadLeft(HeadingWidth - 1) + " ");
            text.AppendLine(string.Concat(shown.Select(i => cell(i, j))).TrimEnd());
        }

        text.Append($"{heading} rpm".PadLeft(HeadingWidth - 1) + " ");
        text.AppendLine(string.Concat(shown.Select(i => speeds[i].ToString("0", CultureInfo.InvariantCulture).PadLeft(CellWidth - 1) + " ")).TrimEnd());
        if (Stride > 1)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"One speed in {Stride} of the {speeds.Count} computed; --csv and --json hold them all.");
        }

        return text.ToString();
    }

    private string Cell(int i, int j)
    {
        var point = map.ForBarrel(number).Points[i, j];
        if ((point.Validity & NoAnswer) != PointValidity.Inside)
        {
            return ".".PadLeft(CellWidth - 1) + " ";
        }

        var target = MixtureTargets.At(map.Grid.ThrottleDegrees[j]);
        var mark = (point.Validity & Doubtful) != PointValidity.Inside ? "?" : point.Lambda > target.Leanest ? "+" : point.Lambda < target.Richest ? "-" : " ";
        return point.Lambda.ToString("0.00", CultureInfo.InvariantCulture).PadLeft(CellWidth - 1) + mark;
    }

    private static string Change(BarrelPoint before, BarrelPoint after) =>
        ((before.Validity | after.Validity) & NoAnswer) != PointValidity.Inside
            ? ".".PadLeft(CellWidth - 1) + " "
            : (after.Lambda - before.Lambda).ToString("+0.00;-0.00;0.00", CultureInfo.InvariantCulture).PadLeft(CellWidth - 1) + " ";
}
