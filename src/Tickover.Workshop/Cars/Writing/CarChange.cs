using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.Cars.Writing;

/// <summary>Changes one member of a car's document.</summary>
internal static class CarChange
{
    private const string AllBarrels = "barrels";
    private const string Carburettors = "carburettors";
    private const int StepsToCarburettorSetting = 3;
    private const int StepsToBarrelSetting = 5;

    /// <summary>Changes members and reads the document again.</summary>
    /// <param name="car">The car.</param>
    /// <param name="changes">Paths and what was typed for them, in order; blank to take the member out.</param>
    /// <returns>The changed car, or the faults.</returns>
    public static CarReading Apply(Car car, IEnumerable<KeyValuePair<string, string>> changes)
    {
        var edit = new DocumentEdit(car.Document);
        var refused = new List<Fault>();
        foreach (var (path, text) in changes)
        {
            var target = DocumentPath.Parse(path) is { } parsed ? Target(parsed) : null;
            if (target is null || !IsThere(edit, target))
            {
                refused.Add(Refused(path));
            }
            else
            {
                Write(edit, target, text);
            }
        }

        var reading = CarReader.Read(edit.Text);
        return refused.Count == 0 ? reading : new CarReading(null, [.. refused, .. reading.Faults], reading.Warnings);
    }

    private static void Write(DocumentEdit edit, DocumentPath target, string text)
    {
        if (target.Steps is [(AllBarrels, _), _])
        {
            RemoveNarrower(edit, target.Name);
        }

        if (string.IsNullOrWhiteSpace(text))
        {
            edit.Remove(target);
        }
        else
        {
            edit.Set(target, ValueText.ToJson(target.Name, text.Trim()));
        }
    }

    /// <summary>The member of the document that a path means, or null where it means none.</summary>
    private static DocumentPath? Target(DocumentPath path)
    {
        var steps = path.Steps;
        var known = steps switch
        {
            [(not null, _)] => DocumentForm.Root.Except(["format", "engine", "ambient", AllBarrels, Carburettors], StringComparer.Ordinal),
            [("engine", _), (not null, _)] => DocumentForm.Engine,
            [("ambient", _), (not null, _)] => DocumentForm.Ambient,
            [("barrel" or AllBarrels, _), (not null, _)] => DocumentForm.Settings,
            [(Carburettors, _), (null, _), (not null, _)] => DocumentForm.Carburettor.Except([AllBarrels], StringComparer.Ordinal),
            [(Carburettors, _), (null, _), (AllBarrels, _), (null, _), (not null, _)] => DocumentForm.Barrel,
            _ => [],
        };
        if (!known.Contains(path.Name, StringComparer.Ordinal))
        {
            return null;
        }

        return steps is [("barrel", _), _] ? DocumentPath.Of(AllBarrels, path.Name) : path;
    }

    private static bool IsThere(DocumentEdit edit, DocumentPath target) =>
        target.Steps.Count is not (StepsToCarburettorSetting or StepsToBarrelSetting) || edit.Has(target.Above);

    private static void RemoveNarrower(DocumentEdit edit, string name)
    {
        var carburettors = DocumentPath.Of(Carburettors);
        for (var i = 0; i < edit.CountAt(carburettors); i++)
        {
            var carburettor = carburettors.At(i);
            edit.Remove(carburettor.Then(name));
            var barrels = carburettor.Then(AllBarrels);
            for (var j = 0; j < edit.CountAt(barrels); j++)
            {
                edit.Remove(barrels.At(j).Then(name));
            }
        }
    }

    private static Fault Refused(string path) => new(
        path.Length <= DocumentForm.LongestText ? path : path[..DocumentForm.LongestText] + "…",
        "This is no figure of the car",
        "a path such as engine.bore, ambient.temperature, fuel, barrel.mainJet or carburettors[0].barrels[1].mainJet",
        "Check the name against docs/car-document.md.");
}
