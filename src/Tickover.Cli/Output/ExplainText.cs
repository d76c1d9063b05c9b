using System.Globalization;
using System.Text;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Cli.Output;

/// <summary>The working at one point as a person reads it.</summary>
/// <param name="width">Columns to fill.</param>
internal sealed class ExplainText(int width)
{
    private const double SecondsPerHour = 3600;
    private const string Indent = "    ";

    /// <summary>Writes it.</summary>
    /// <param name="car">The car.</param>
    /// <param name="working">The working.</param>
    /// <returns>The text.</returns>
    public string Text(Car car, PointWorking working)
    {
        var text = new StringBuilder();
        text.AppendLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{car.Name}, barrel {working.BarrelNumber}, {working.SpeedRpm:0.##} rpm, {working.ThrottleDegrees:0.##}° open from seated"));
        foreach (var line in Verdict(working))
        {
            WrappedText.Append(text, width, string.Empty, line);
        }

        for (var i = 0; i < working.Steps.Count; i++)
        {
            Append(text, i + 1, working.Steps[i]);
        }

        return text.ToString();
    }

    private static IEnumerable<string> Verdict(PointWorking working)
    {
        var (point, target) = (working.Point, working.Target);
        if ((point.Validity & (PointValidity.NoFuel | PointValidity.NoAir)) != PointValidity.Inside)
        {
            yield return "No mixture here.";
        }
        else
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"λ {point.Lambda:0.00} ±{working.RelativeBand * point.Lambda:0.00}, {point.AirFuelRatio:0.0} of air to 1 of fuel by mass; {point.AirKilogramsPerSecond * SecondsPerHour:0.0} kg/h of air.");
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"Target {target.Richest:0.00} to {target.Leanest:0.00} ({target.Regime}): {Judged(working)}.");
        }

        if (point.Validity != PointValidity.Inside)
        {
            yield return $"Take care: {ValidityWords.Of(point.Validity)}.";
        }
    }

    private static string Judged(PointWorking working)
    {
        var (lambda, target) = (working.Point.Lambda, working.Target);
        var beyond = lambda > target.Leanest ? lambda - target.Leanest : Math.Min(0, lambda - target.Richest);
        if (beyond == 0)
        {
            return "within it";
        }

        var side = beyond > 0 ? "lean" : "rich";
        return Math.Abs(beyond) > working.RelativeBand * lambda ? $"too {side}" : $"{side} of it, by less than the band; readings of this car decide";
    }

    private void Append(StringBuilder text, int number, WorkingStep step)
    {
        text.AppendLine();
        var title = $"{number.ToString(CultureInfo.InvariantCulture),2}. {step.Title}";
        text.AppendLine(title + step.Equation.PadLeft(Math.Max(step.Equation.Length + 2, width - title.Length)));
        WrappedText.Append(text, width, Indent, step.Formula);
        WrappedText.Append(text, width, Indent, step.NumbersIn);
        WrappedText.Append(text, width, Indent, $"= {step.Answer}");
        foreach (var figure in step.Inputs)
        {
            WrappedText.Append(text, width, Indent, $"{figure.Definition.Label} {FigureText.Show(figure)} ({CarSummary.Source(figure)})");
        }

        if (step.Note.Length > 0)
        {
            WrappedText.Append(text, width, Indent, step.Note);
        }
    }
}
