using System.Security.Cryptography;
using System.Text;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Cars;

/// <summary>Turns a car into a form and what comes back into a changed car.</summary>
internal static class DescriptionForm
{
    private const string BarrelKey = "barrel.";
    private const string FuelPath = "fuel";

    /// <summary>A short hash of a document: a form made from an older one is noticed.</summary>
    public static string VersionOf(string document) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(document)))[..16];

    /// <summary>The form of a car.</summary>
    /// <param name="shelved">The document.</param>
    /// <param name="barrelNumber">The barrel, or null for all alike.</param>
    /// <param name="typed">What was typed, by path; empty for a fresh form.</param>
    /// <param name="faults">What is wrong with it.</param>
    public static DescriptionView View(
        ShelvedCar shelved, int? barrelNumber, IReadOnlyDictionary<string, string>? typed = null, IReadOnlyList<Fault>? faults = null)
    {
        var car = shelved.Reading.Car!;
        var barrel = car.Barrels.FirstOrDefault(b => b.Number == barrelNumber);
        var fields = Fields(car, barrel).Select(f => (f.Part, Field: Filled(f.Field, typed, faults ?? []))).ToList();
        return new DescriptionView
        {
            Shelved = shelved,
            Car = car,
            Barrel = barrel,
            Groups = [.. fields.GroupBy(f => f.Part, f => f.Field, StringComparer.Ordinal).Select(g => new DescriptionGroup(
                g.Key, [.. g], g.Any(f => f.Fault is not null)))],
            OtherFaults = [.. (faults ?? []).Where(fault => !fields.Exists(f => f.Field.Fault == fault))],
        };
    }

    /// <summary>Applies what was typed; everything that is wrong with it at once.</summary>
    /// <param name="car">The car on the shelf.</param>
    /// <param name="barrel">The barrel, or null for all alike.</param>
    /// <param name="typed">What was typed, by path.</param>
    /// <returns>The changed car or the faults, and how many figures changed.</returns>
    public static (CarReading Reading, int Changed) Apply(Car car, CarBarrel? barrel, IReadOnlyDictionary<string, string> typed)
    {
        var changes = Fields(car, barrel).Select(f => f.Field)
            .Where(f => typed.ContainsKey(f.Path) && !string.Equals(typed[f.Path].Trim(), f.Text, StringComparison.Ordinal))
            .Select(f => KeyValuePair.Create(f.Path, WithUnit(typed[f.Path], f.Unit)))
            .ToList();
        return changes.Count == 0 ? (new CarReading(car, [], []), 0) : (CarDocument.Change(car, changes), changes.Count);
    }

    // People type 34 where the unit stands beside the field.
    private static string WithUnit(string text, string unit)
    {
        var trimmed = text.Trim();
        return unit.Length > 0 && trimmed.Length > 0 && Mixture.BenchQueryReader.Number(trimmed) is not null ? $"{trimmed} {unit}" : trimmed;
    }

    private static IEnumerable<(string Part, DescriptionField Field)> Fields(Car car, CarBarrel? barrel)
    {
        var drawn = barrel ?? car.Barrels[0];
        foreach (var figure in drawn.Figures)
        {
            var path = barrel is null ? figure.Definition.Key : $"{barrel.Path}.{figure.Definition.Key[BarrelKey.Length..]}";
            yield return (figure.Definition.Part, FieldOf(path, figure) with { Differs = barrel is null ? Differing(car, figure.Definition.Key) : null });
        }

        foreach (var figure in car.Engine.Concat(car.Ambient))
        {
            yield return (figure.Definition.Part, FieldOf(figure.Definition.Key, figure));
        }

        yield return ("Fuel", new DescriptionField
        {
            Path = FuelPath,
            Label = "Fuel grade",
            Text = car.FuelOrigin.Kind == OriginKind.Given ? car.FuelGrade : "",
            Help = "What is in the tank, as the pump's label says.",
            Default = car.FuelOrigin.Kind == OriginKind.Given ? null : $"{car.FuelGrade}. {car.FuelOrigin.Note}",
        });
    }

    private static DescriptionField FieldOf(string path, Figure figure)
    {
        var (definition, measure) = (figure.Definition, figure.Definition.Measure);
        return new DescriptionField
        {
            Path = path,
            Label = definition.Label,
            Text = figure.AsTyped ?? "",
            Unit = FigureText.Unit(measure, figure.Si),
            Range = $"{FigureText.Show(measure, definition.MinimumSi)} to {FigureText.Show(measure, definition.MaximumSi)}",
            Help = definition.Help,
            Default = figure.AsTyped is null ? $"{FigureText.Show(figure)}. {OriginWords.Of(figure.Origin)}" : null,
        };
    }

    private static string? Differing(Car car, string key)
    {
        var shown = car.Barrels.Select(b => FigureText.Show(b.Figures[key])).Distinct(StringComparer.Ordinal).ToList();
        return shown.Count > 1 ? string.Join(", ", shown) : null;
    }

    private static DescriptionField Filled(DescriptionField field, IReadOnlyDictionary<string, string>? typed, IReadOnlyList<Fault> faults)
    {
        var name = field.Path[(field.Path.LastIndexOf('.') + 1)..];
        return field with
        {
            Text = typed?.GetValueOrDefault(field.Path) ?? field.Text,
            Fault = faults.FirstOrDefault(f => string.Equals(f.Path, field.Path, StringComparison.Ordinal))
                ?? faults.FirstOrDefault(f => f.Path.EndsWith('.' + name, StringComparison.Ordinal)),
        };
    }
}
