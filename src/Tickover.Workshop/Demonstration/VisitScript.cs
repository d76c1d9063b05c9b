using System.Globalization;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Demonstration;

/// <summary>Plays one visit: fills in visit, stage, day and who, so that the scenes hold only what happens.</summary>
internal sealed class VisitScript(Script script, string name, int begins)
{
    private Stage _stage;
    private int _daysAgo;
    private int _minutes = 8 * 60;
    private int _count = begins;
    private Person _who = Cast.Hale;

    private Id<Visit> Visit => Named.Of<Visit>(name);

    private DateOnly Day => script.Ago(_daysAgo);

    public VisitScript On(Stage stage, int daysAgo, Person who)
    {
        _minutes = daysAgo == _daysAgo ? _minutes : 8 * 60;
        (_stage, _daysAgo, _who) = (stage, daysAgo, who);
        return this;
    }

    public VisitScript Open(Visit visit) => Do("the car taken in", visit with { Id = Visit });

    public VisitScript Add(params RecordItem[] items) => Do(Words(items[0]), [.. items.Select(Filled)]);

    public VisitScript Work(string what, string why) => Add(new WorkNote { Kind = WorkKind.Done, What = what, Why = why });

    public VisitScript Spend(int minutes, string what) => Add(new TimeLine { Minutes = minutes, What = what });

    public VisitScript Sign(string check, string seen) =>
        Add(new SignOff { Gate = GateCatalogue.Find(check)!.Gate, Check = check, Seen = seen });

    /// <summary>Readings of one kind over numbered places, kept together as one round.</summary>
    public VisitScript Round(string measure, Moment moment, Instrument with, double? rpm, params string[] values)
    {
        var per = MeasureCatalogue.Find(measure)!.Per;
        var round = Named.Number(string.Create(CultureInfo.InvariantCulture, $"round/{name}/{_count}"));
        return Do($"{measure}, {values.Length} read", [.. values.Select((v, i) => Reading(measure, new Place(per, (i + 1).ToString(CultureInfo.InvariantCulture)), v, moment) with
        {
            Instrument = with.Id, EngineSpeedRpm = rpm, Round = round,
        })]);
    }

    /// <summary>Readings taken one by one with one instrument: measure, place ("car", "tank:left") and text as typed.</summary>
    public VisitScript Read(Moment moment, Instrument? with, params (string Measure, string Place, string Typed)[] rows) =>
        Do($"{rows.Length} readings", [.. rows.Select(r => Reading(r.Measure, Place.Read(r.Place)!.Value, r.Typed, moment) with { Instrument = with?.Id })]);

    /// <summary>One step of filling the tanks: litres, ohms and needle belong together.</summary>
    public VisitScript Fill(string litres, string ohms, string needle)
    {
        var round = Named.Number(string.Create(CultureInfo.InvariantCulture, $"round/{name}/{_count}"));
        return Do($"filled to {litres}",
        [
            .. new[] { ("strappingLitres", "tank:left", litres), ("strappingLitres", "tank:right", litres), ("strappingResistance", "tank:left", ohms), ("strappingNeedle", "car", needle) }
                .Select(r => Reading(r.Item1, Place.Read(r.Item2)!.Value, r.Item3, Moment.AsLeft) with { Round = round, Instrument = string.Equals(r.Item1, "strappingResistance", StringComparison.Ordinal) ? Cast.Meter.Id : Cast.Can.Id }),
        ]);
    }

    public VisitScript NotRead(string measure, string place, string why) =>
        Do($"no reading: {measure}", Reading(measure, Place.Read(place)!.Value, null, Moment.AsFound) with { NoReading = why });

    /// <summary>Closes the stage in hand.</summary>
    public VisitScript Close(int begun, string note = "") =>
        Add(new StageMark { State = StageState.Done, BegunOn = script.Ago(begun), EndedOn = Day, Note = note });

    public VisitScript Begin() => Add(new StageMark { State = StageState.Begun, BegunOn = Day });

    private VisitScript Do(string words, params IReadOnlyList<RecordItem> items)
    {
        script.Do(words, Visit, _who.Id, items);
        return this;
    }

    private Reading Reading(string measure, Place place, string? typed, Moment moment)
    {
        var definition = MeasureCatalogue.Find(measure) ?? throw new ArgumentException($"There is no measure {measure}.", nameof(measure));
        var read = typed is null ? new TypedReading() : MeasureText.Read(definition, typed, UnitChoice.Metric);
        return new Reading
        {
            Id = Next<Reading>(),
            Visit = Visit,
            Stage = _stage,
            Measure = measure,
            Place = place,
            Moment = moment,
            Typed = read.IsRead ? read.Typed : throw new ArgumentException(read.Problem, nameof(typed)),
            Si = read.Si,
            TakenAt = new DateTimeOffset(Day, TimeOnly.MinValue, TimeSpan.Zero).AddMinutes(_minutes += 2),
        };
    }

    private RecordItem Filled(RecordItem item) => item switch
    {
        Finding f => f with { Id = Next<Finding>(), Visit = Visit, Stage = _stage },
        PartLine p => p with { Id = Next<PartLine>(), Visit = Visit, Stage = _stage, FittedOn = p.State == PartState.Fitted ? Day : null },
        TimeLine t => t with { Id = Next<TimeLine>(), Visit = Visit, Stage = _stage, Person = _who.Id, On = Day },
        WorkNote n => n with { Id = Next<WorkNote>(), Visit = Visit, Stage = _stage, On = Day },
        StageMark s => s with { Id = StageMark.IdFor(Visit, _stage), Visit = Visit, Stage = _stage },
        SignOff s => s with { Id = Next<SignOff>(), Visit = Visit, Person = _who.Id, On = Day },
        CautionSeen c => c with { Id = Next<CautionSeen>(), Visit = Visit, Person = _who.Id },
        Approval a => a with { Id = Next<Approval>(), Visit = Visit },
        RoadRun r => r with { Id = Next<RoadRun>(), Visit = Visit, On = Day },
        Worksheet w => w with { Id = Next<Worksheet>(), Visit = Visit, Stage = _stage, On = Day },
        Signature s => s with { Id = Next<Signature>(), Visit = Visit, Person = _who.Id, On = Day },
        _ => item,
    };

    private Id<T> Next<T>() => Named.Of<T>(string.Create(CultureInfo.InvariantCulture, $"{name}/{_count++}"));

    private static string Words(RecordItem item) => item switch
    {
        Finding f => $"found: {f.What}",
        PartLine p => $"part: {p.What}",
        TimeLine t => $"time: {t.What}",
        WorkNote n => $"note: {n.What}",
        StageMark s => $"stage {s.State}",
        SignOff s => s.Check.Length > 0 ? $"signed: {s.Check}" : "tap overridden",
        CautionSeen c => $"caution seen: {c.Caution}",
        Approval a => $"asked: {a.Asked}",
        RoadRun r => $"road log read: {r.Name}",
        Worksheet w => $"worksheet kept: {w.Name}",
        _ => "signed",
    };
}
