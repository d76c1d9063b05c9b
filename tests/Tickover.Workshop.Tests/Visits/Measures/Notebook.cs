using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Tests.Visits.Measures;

/// <summary>Writes visits for the tests: an invented car with invented readings.</summary>
internal sealed class Notebook(string document = "", DateOnly? arrived = null)
{
    public static readonly Instrument Meter = new() { Name = "Airflow meter", GoodTo = "±0.25 kg/h", CalibratedOn = new DateOnly(2026, 1, 10), DueOn = new DateOnly(2027, 1, 10) };

    private readonly List<Reading> _readings = [];
    private readonly DateOnly _arrived = arrived ?? new DateOnly(2026, 3, 2);

    public List<Component> Components { get; } = [];

    public Instrument? With { get; set; }

    public Visit Visit { get; set; } = new();

    /// <summary>Keeps a reading as a person types it.</summary>
    public Reading Read(string measure, string place, string typed, Moment moment = Moment.AsLeft, Guid? round = null, double? rpm = null)
    {
        var definition = MeasureCatalogue.Find(measure)!;
        var text = MeasureText.Read(definition, typed, UnitChoice.Metric);
        Assert.Equal("", text.Problem);
        var reading = new Reading
        {
            Measure = measure,
            Place = new Place(definition.Per, place),
            Typed = text.Typed,
            Si = text.Si,
            Moment = moment,
            Round = round,
            EngineSpeedRpm = rpm,
            Instrument = With?.Id,
            TakenAt = new DateTimeOffset(_arrived, new TimeOnly(11, _readings.Count % 60), TimeSpan.Zero),
        };
        _readings.Add(reading);
        return reading;
    }

    /// <summary>Keeps a round, barrel after barrel, the first again at the end.</summary>
    public Guid Round(string measure, Moment moment, string again, params string[] typed)
    {
        var round = Guid.NewGuid();
        for (var i = 0; i < typed.Length; i++)
        {
            Read(measure, $"{i + 1}", typed[i], moment, round, 900 + (10 * i));
        }

        if (again.Length > 0)
        {
            Read(measure, "1", again, moment, round, 900);
        }

        return round;
    }

    public void Strike(Reading reading) => _readings[_readings.IndexOf(reading)] = reading with { Removed = true };

    public void Correct(Reading reading, string typed)
    {
        var right = Read(reading.Measure, reading.Place.Name, typed, reading.Moment, reading.Round);
        _readings[^1] = right with { Corrects = reading.Id };
    }

    public VisitRecord Record() => new()
    {
        Visit = Visit with { ArrivedOn = _arrived },
        Car = new CustomerCar(),
        Workshop = new WorkshopRecord(new House(), [], [Meter]),
        Descriptions = document.Length == 0 ? [] : [new CarDescription { Since = new DateOnly(2020, 1, 1), Document = document }],
        Components = Components,
        Readings = _readings,
    };
}
