using System.Globalization;
using Microsoft.AspNetCore.Components;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Web.Mixture;

/// <summary>The working at the point looked at.</summary>
public partial class PointCard
{
    // The table beside the picture has room for these; the whole working is one tap away.
    private const int InputsShown = 4;

    /// <summary>What is on the bench.</summary>
    [Parameter, EditorRequired]
    public Bench Bench { get; set; } = default!;

    /// <summary>Address of the page it stands on, without the query.</summary>
    [Parameter, EditorRequired]
    public string Page { get; set; } = "";

    private string Standing => PointFigures.Standing(Bench.FittedPoint);

    private WorkingStep? Last => Bench.Point.Steps.Count > 0 ? Bench.Point.Steps[^1] : null;

    private IEnumerable<Figure> KeyInputs => Bench.Point.Steps
        .SelectMany(s => s.Inputs)
        .DistinctBy(f => f.Definition.Key, StringComparer.Ordinal)
        .OrderByDescending(f => f.Definition.Measure == Measure.JetBore)
        .ThenByDescending(f => f.Definition.Key.StartsWith("barrel.", StringComparison.Ordinal))
        .ThenByDescending(f => f.Origin.Kind)
        .Take(InputsShown);

    private IEnumerable<(string Name, string Value)> Hidden => Bench.Query.Pairs().Where(p => p.Name is not ("rpm" or "throttle"));

    private static string Text(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);
}
