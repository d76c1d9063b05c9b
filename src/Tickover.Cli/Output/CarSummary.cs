using System.Globalization;
using System.Text;
using Tickover.Workshop.Cars;

namespace Tickover.Cli.Output;

/// <summary>What a document describes, and which figures stand in for what it does not say.</summary>
/// <param name="car">The car.</param>
/// <param name="width">Columns to fill.</param>
internal sealed class CarSummary(Car car, int width)
{
    private const double LitresPerCubicMetre = 1000;
    private static readonly string[] GivenHeadings = ["Part", "Figure", "Value", "As written"];
    private static readonly string[] DefaultHeadings = ["Part", "Figure", "Value", "Where it comes from"];

    private readonly IReadOnlyList<AlikeBarrels> _barrels = AlikeBarrels.Of(car);

    /// <summary>The car in one line.</summary>
    public string Headline
    {
        get
        {
            var (bore, stroke) = (car.Engine.Si("engine.bore"), car.Engine.Si("engine.stroke"));
            var litres = Math.PI / 4 * bore * bore * stroke * car.CylinderCount * LitresPerCubicMetre;
            var carburettors = car.Barrels.Select(b => b.Carburettor).Distinct().Count();
            return string.Create(
                CultureInfo.InvariantCulture,
                $"{car.Name}: {car.Layout}, {litres:0.00} l, {Counted(carburettors, "carburettor")}, {Counted(car.Barrels.Count, "barrel")}, fuel {car.FuelGrade}.");
        }
    }

    /// <summary>How many figures are the car's own, in one line.</summary>
    public string Census
    {
        get
        {
            var all = AllFigures().ToArray();
            var given = all.Count(f => f.Origin.Kind == OriginKind.Given);
            return $"{Counted(all.Length, "figure")}: {given} from the document, {all.Length - given} by default.";
        }
    }

    /// <summary>What the document gives, part by part.</summary>
    /// <returns>The lines.</returns>
    public string Given() => Tables(GivenHeadings, f => f.Origin.Kind == OriginKind.Given, f => f.AsTyped ?? FigureText.Show(f));

    /// <summary>What stands in by default, with its origin.</summary>
    /// <returns>The lines.</returns>
    public string Defaults() => Tables(DefaultHeadings, f => f.Origin.Kind != OriginKind.Given, Source);

    /// <summary>Where a figure comes from, in words, without saying its value again.</summary>
    /// <param name="figure">The figure.</param>
    /// <returns>The words, without a full stop.</returns>
    public static string Source(Figure figure)
    {
        var note = figure.Origin.Note.TrimEnd('.');
        var value = FigureText.Show(figure) + ", ";
        return figure.Origin.Kind == OriginKind.Given
            ? Words(OriginKind.Given)
            : $"{Words(figure.Origin.Kind)}: {(note.StartsWith(value, StringComparison.Ordinal) ? note[value.Length..] : note)}";
    }

    /// <summary>The class of an origin in words.</summary>
    /// <param name="kind">The class.</param>
    /// <returns>The words.</returns>
    public static string Words(OriginKind kind) => kind switch
    {
        OriginKind.Given => "document",
        OriginKind.Computed => "computed",
        OriginKind.Assumed => "assumed",
        _ => "common practice",
    };

    private IEnumerable<Figure> AllFigures() =>
        car.Engine.Concat(car.Ambient).Concat(_barrels.SelectMany(b => b.Barrel.Figures));

    private string Tables(string[] headings, Func<Figure, bool> wanted, Func<Figure, string> last)
    {
        var text = new StringBuilder();
        Append(text, "Engine and the day", car.Engine.Concat(car.Ambient));
        foreach (var group in _barrels)
        {
            Append(text, AlikeBarrels.Words(group.Numbers), group.Barrel.Figures);
        }

        return text.ToString();

        void Append(StringBuilder to, string title, IEnumerable<Figure> figures)
        {
            var rows = figures.Where(wanted)
                .Select(f => (string[])[f.Definition.Part, f.Definition.Label, FigureText.Show(f), last(f)])
                .ToArray();
            if (rows.Length > 0)
            {
                to.AppendLine().AppendLine(title).Append(TextTable.Text(width, headings, rows));
            }
        }
    }

    private static string Counted(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";
}
