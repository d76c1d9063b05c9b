using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Web.Visits;

/// <summary>The readings of a visit as the table of a stage shows them.</summary>
/// <param name="record">The visit.</param>
internal sealed class StageValues(VisitRecord record)
{
    private const int MostPlaces = 12;

    /// <summary>The last readings of a measure at each place.</summary>
    public string Of(MeasureDefinition measure, Moment moment)
    {
        var last = record.Readings
            .Where(r => !r.Removed && r.Moment == moment && string.Equals(r.Measure, measure.Key, StringComparison.Ordinal))
            .GroupBy(r => r.Place)
            .Select(g => g.Last())
            .OrderBy(r => r.Place.Name, NaturalOrder.Instance)
            .ToList();
        return last switch
        {
            [] => "",
            [{ Place.Kind: PlaceKind.Car } one] => Text(one),
            _ => string.Join(", ", last.Take(MostPlaces).Select(r => $"{r.Place.Name}:\u00A0{Number(measure, r)}")) + (last.Count > MostPlaces ? ", …" : "") + Unit(measure, last),
        };

        string Text(Reading reading) => reading.NoReading.Length > 0 ? "no reading" : reading.Si is { } si && measure.IsNumber ? ShownMeasure.Text(measure, si, Units) : reading.Typed;
    }

    private UnitChoice Units => record.Workshop.House.Units;

    private string Number(MeasureDefinition measure, Reading reading) =>
        reading.NoReading.Length > 0 ? "none" : reading.Si is { } si && measure.IsNumber ? ShownMeasure.Number(measure, si, Units) : reading.Typed;

    private string Unit(MeasureDefinition measure, List<Reading> readings) =>
        measure.IsNumber && readings.Exists(r => r.Si is not null) && measure.Unit(Units) is { Length: > 0 } unit ? $"\u2009{unit}" : "";
}
