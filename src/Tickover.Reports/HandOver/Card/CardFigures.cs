using Tickover.Reports.Paper;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Reports.HandOver.Card;

/// <summary>Figures for the card: as left; where a setting was not moved, as found with a star; where it was not measured, from the car document with a dagger.</summary>
internal sealed class CardFigures(Telling telling)
{
    private const string Star = "*";
    private const string Dagger = "\u2020";

    private static readonly Dictionary<string, string> InDocument = new(StringComparer.Ordinal)
    {
        ["choke"] = "barrel.choke",
        ["mainJet"] = "barrel.mainJet",
        ["airCorrector"] = "barrel.airCorrector",
        ["idleJet"] = "barrel.idleJet",
        ["idleBleed"] = "barrel.idleBleed",
        ["pumpJet"] = "barrel.pumpJet",
        ["backBleed"] = "barrel.pumpBackBleed",
    };

    internal Car? Car { get; } = Workshop.Visits.Measures.Places.CarOf(telling.Record);

    /// <summary>Whether any figure so far carried a star.</summary>
    internal bool AnyStar { get; private set; }

    /// <summary>Whether any figure so far carried a dagger.</summary>
    internal bool AnyDagger { get; private set; }

    /// <summary>Names of settings that no figure was found for.</summary>
    internal List<string> Wanting { get; } = [];

    /// <summary>The places of a kind that the card has columns for.</summary>
    internal IReadOnlyList<Place> Places(PlaceKind kind) => Workshop.Visits.Measures.Places.Of(telling.Record, kind);

    /// <summary>A measure's text at a place; empty where nothing is known of it.</summary>
    internal string At(MeasureDefinition measure, Place place)
    {
        var (text, mark) = Find(measure, place);
        return text + mark;
    }

    private (string Text, string Mark) Find(MeasureDefinition measure, Place place)
    {
        var row = telling.Compared(measure.Key)?.Rows.FirstOrDefault(r => r.Place == place);
        if (Text(measure, row?.AsLeft) is { Length: > 0 } left)
        {
            return (left, "");
        }

        if (Text(measure, row?.AsFound) is { Length: > 0 } found)
        {
            AnyStar = true;
            return (found, Star);
        }

        var given = Document(measure.Key, place);
        AnyDagger |= given.Length > 0;
        return (given, given.Length > 0 ? Dagger : "");
    }

    /// <summary>A measure over all its places as one text with unit; empty where nothing is known.</summary>
    internal string Line(string key)
    {
        var measure = MeasureCatalogue.Find(key)!;
        var places = measure.Per == PlaceKind.Car ? [Place.WholeCar] : telling.Compared(key)?.Rows.Select(r => r.Place).ToList() ?? [.. Places(measure.Per)];
        var texts = places.Select(p => (Place: p, Found: Find(measure, p))).Where(x => x.Found.Text.Length > 0).ToList();
        if (texts.Count == 0)
        {
            Wanting.Add(telling.Label(measure));
            return "";
        }

        var unit = Unit(measure, telling.Label(measure));
        unit = unit is "" or "°" ? unit : $"\u202f{unit}";
        return texts.Count == 1 && texts[0].Place.Kind is PlaceKind.Car or PlaceKind.Bank
            ? texts[0].Found.Text + unit + texts[0].Found.Mark
            : string.Join(", ", texts.Select(x => $"{Short(x.Place)} {x.Found.Text}{unit}{x.Found.Mark}"));
    }

    /// <summary>The unit that is written with a measure; none where its name says it.</summary>
    internal string Unit(MeasureDefinition measure, string label)
    {
        var unit = measure.IsNumber ? measure.Unit(telling.House.Units) : "";
        return label.Contains(unit, StringComparison.Ordinal) && unit.Length > 2 ? "" : unit;
    }

    private string Short(Place place) => place.Kind == PlaceKind.Bank ? telling.Where(place).ToLowerInvariant() : place.Name;

    private string Text(MeasureDefinition measure, JudgedReading? judged) => judged switch
    {
        null or { Reading.NoReading.Length: > 0 } => "",
        { Reading.Si: { } si } => ShownMeasure.Number(measure, si, telling.House.Units),
        _ => judged.Reading.Typed,
    };

    private string Document(string key, Place place)
    {
        if (Car?.Barrels.FirstOrDefault(b => string.Equals(b.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), place.Name, StringComparison.Ordinal)) is not { } barrel || place.Kind != PlaceKind.Barrel)
        {
            return "";
        }

        var text = string.Equals(key, "emulsionTube", StringComparison.Ordinal) ? barrel.EmulsionTube
            : InDocument.TryGetValue(key, out var figure) ? barrel.Figures[figure].AsTyped
            : null;
        return text is null ? "" : PaperText.Clean(text);
    }
}
