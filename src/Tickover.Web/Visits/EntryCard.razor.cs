using System.Globalization;
using Microsoft.AspNetCore.Components;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Web.Visits;

/// <summary>Where a reading is typed: one field a place, so that a round is one act.</summary>
public partial class EntryCard
{
    private const int MostKept = 24;

    private static readonly (Moment, string)[] Moments = [(Moment.AsFound, "As found"), (Moment.Working, "Working"), (Moment.AsLeft, "As left")];

    /// <summary>The visit.</summary>
    [Parameter, EditorRequired]
    public VisitRecord Record { get; set; } = null!;

    /// <summary>The stage.</summary>
    [Parameter, EditorRequired]
    public Stage Stage { get; set; }

    /// <summary>What is measured.</summary>
    [Parameter, EditorRequired]
    public MeasureDefinition Measure { get; set; } = null!;

    /// <summary>Who is at work here.</summary>
    [Parameter]
    public Id<Person>? Person { get; set; }

    /// <summary>Today.</summary>
    [Parameter]
    public DateOnly Today { get; set; }

    /// <summary>What to ask once before an unusual figure is kept.</summary>
    [Parameter]
    public string? Ask { get; set; }

    private IReadOnlyList<Place> Shown => Places.Of(Record, Measure.Per);

    private bool MayBeNamed => Measure.Per != PlaceKind.Car && Places.MayBeNamed(Record, Measure.Per);

    private string Unit => Measure.Unit(Record.Workshop.House.Units);

    // Only where both ends are plain numbers: turns and needle places are written in words and eighths.
    private string? Plausible => Measure.Usual is { } usual && Plain(usual.LowSi) is { } low && Plain(usual.HighSi) is { } high ? $"{low} {high}" : null;

    private GateStatus? EngineGate => Measure.EngineRuns ? GateStatus.Of(Record, Gate.EngineMayRun, Today) : null;

    private IEnumerable<Reading> OfThis => Record.Readings.Where(r => string.Equals(r.Measure, Measure.Key, StringComparison.Ordinal));

    private IReadOnlyList<Reading> Kept => [.. OfThis.Reverse().Take(MostKept)];

    private Moment FirstMoment => OfThis.LastOrDefault(r => !r.Removed)?.Moment ?? Moment.AsFound;

    private Id<Instrument>? LastInstrument => OfThis.LastOrDefault(r => r.Instrument is not null)?.Instrument;

    private string? Plain(double si)
    {
        var text = ShownMeasure.Number(Measure, si, Record.Workshop.House.Units).Replace('−', '-');
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _) ? text : null;
    }

    private string Words(Reading reading)
    {
        var parts = new[]
        {
            reading.Moment switch { Moment.AsFound => "as found", Moment.AsLeft => "as left", _ => "working" },
            Days.Moment(reading.TakenAt, Today),
            Record.Workshop.InitialsOf(reading.KeptBy),
            Record.Workshop.Find(reading.Instrument)?.Name ?? "",
            reading.EngineSpeedRpm is { } rpm ? string.Create(CultureInfo.InvariantCulture, $"{rpm:0} rpm") : "",
            reading.Note,
        };
        return string.Join(", ", parts.Where(p => p.Length > 0));
    }
}
