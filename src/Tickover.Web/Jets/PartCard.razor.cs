using Microsoft.AspNetCore.Components;
using Tickover.Web.Mixture;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Jets;

/// <summary>The part under the hand: its sizes, what a step means, what the trial expects, and the decision.</summary>
public partial class PartCard
{
    /// <summary>What is on the bench.</summary>
    [Parameter, EditorRequired]
    public Bench Bench { get; set; } = default!;

    /// <summary>Address of the page it stands on, without the query.</summary>
    [Parameter, EditorRequired]
    public string Page { get; set; } = "";

    private string Key => $"barrel.{Bench.Query.Part}";

    private TrialPart? Part => TrialPart.Find(Bench.Query.Part);

    private Figure? Fitted => Bench.Barrel.Figures.FirstOrDefault(f => string.Equals(f.Definition.Key, Key, StringComparison.Ordinal));

    private double TrialSi => Bench.Trial?.Barrels.First(b => b.Number == Bench.Barrel.Number).Figures.Si(Key) ?? Fitted!.Si;

    private string Unit => Fitted is null ? "" : FigureText.Unit(Fitted.Definition.Measure, Fitted.Si);

    private string Before => PointFigures.Lambda(Bench.FittedPoint);

    private string After => PointFigures.Lambda(Bench.TrialPoint!);

    private IEnumerable<(string Text, string Words, string Address, bool Chosen)> Sizes
    {
        get
        {
            var measure = Fitted!.Definition.Measure;
            var (fitted, trial) = (FigureText.Show(Fitted), FigureText.Show(measure, TrialSi));
            foreach (var size in Part!.Sizes(Fitted.Definition, Fitted.Si))
            {
                var text = FigureText.Show(measure, size);
                var same = string.Equals(text, fitted, StringComparison.Ordinal);
                yield return (
                    SizeText.Number(measure, size),
                    same ? "fitted" : Unit,
                    Page + (Bench.Query with { Value = same ? null : text }).ToAddress(),
                    Bench.Trial is not null && !same && string.Equals(text, trial, StringComparison.Ordinal));
            }
        }
    }

    private string StepWords => Fitted!.Definition.Measure switch
    {
        Measure.JetBore or Measure.Length when !string.Equals(Part!.Name, "floatLevel", StringComparison.Ordinal) && Fitted.Si > 0 =>
            $"One step up is {TrialWords.Area(Fitted.Si, Fitted.Si + Part.StepSi)}.",
        Measure.Turns => "One step is a quarter of a turn.",
        _ => $"One step is {FigureText.Show(Fitted.Definition.Measure, Part!.StepSi)}.",
    };

    private string FitWords
    {
        get
        {
            var what = Bench.Query.Changes.Count == 1 && Fitted is not null ? SizeText.Show(Fitted.Definition.Measure, TrialSi) : "the trial";
            return Bench.Query.OneBarrel ? $"Fit {what} to barrel {Bench.Barrel.Number}"
                : Bench.Fitted.Barrels.Count > 1 && Bench.Query.Changes.Count == 1 ? $"Fit {Bench.Fitted.Barrels.Count} × {what}" : $"Fit {what}";
        }
    }

    private string KeepWords => Bench.Query.Changes.Count == 1 && Fitted is not null ? $"Keep {SizeText.Show(Fitted)}" : "Keep as fitted";

    private IEnumerable<(string Name, string Value)> Hidden => Bench.Query.Pairs().Where(p => !string.Equals(p.Name, "value", StringComparison.Ordinal));
}
