using System.Text.Json;
using Tickover.Workshop.Demonstration;
using Tickover.Workshop.Tests.Visits.Cautions;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Advising;
using Tickover.Workshop.Visits.Cautions;
using Tickover.Workshop.Visits.Gates;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Tests.Demonstration;

public sealed class DemonstrationWorkshopTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    private static readonly DateTimeOffset Now = new(2026, 11, 25, 11, 0, 0, TimeSpan.Zero);

    private static readonly IReadOnlyList<Act> Acts = DemonstrationWorkshop.Acts(Documents(), Today);

    private static readonly IReadOnlyList<VisitRecord> Visits = Replay.Of(Acts);

    private static VisitRecord Tern => Visits.Single(v => Is(v.Car.Name, "Larkfield Tern 2800") && v.Visit.LeftOn is null);

    [Fact]
    public void The_same_day_gives_the_same_acts() =>
        Assert.Equal(Written(Acts), Written(DemonstrationWorkshop.Acts(Documents(), Today)));

    [Fact]
    public void Keys_are_unique_and_every_item_is_new()
    {
        Assert.Equal(Acts.Count, Acts.Select(a => a.Key).Distinct().Count());
        var items = Acts.SelectMany(a => a.Items).ToList();
        Assert.Equal(items.Count, items.Select(i => i.Key).Distinct().Count());
        Assert.All(items, i => Assert.Equal(0, i.Version));
    }

    [Fact]
    public void It_is_marked_as_invented() => Assert.True(Visits[0].Workshop.House.Demonstration);

    [Fact]
    public void Every_reading_is_of_a_known_measure_at_a_fitting_place_and_within_what_is_usual() => Assert.All(Visits.SelectMany(v => v.Readings), r =>
    {
        var measure = MeasureCatalogue.Find(r.Measure);
        Assert.NotNull(measure);
        Assert.Equal(measure.Per, r.Place.Kind);
        Assert.True(r.NoReading.Length > 0 || r.Typed.Length > 0, r.Measure);
        Assert.True(r.Si is not { } si || measure.Usual is null || measure.Usual.Holds(si), $"{r.Measure} {r.Typed}");
        Assert.True(measure.Stages.Contains(r.Stage) || r.Moment == Moment.AsLeft || r.Stage == Stage.Arrival, $"{r.Measure} in {r.Stage}");
    });

    [Fact]
    public void Every_caution_check_and_reference_is_known()
    {
        Assert.All(Visits.SelectMany(v => v.Cautions), c => Assert.NotNull(CautionCatalogue.Find(c.Caution)));
        Assert.All(Visits.SelectMany(v => v.SignOffs).Where(s => s.Check.Length > 0), s => Assert.Equal(s.Gate, GateCatalogue.Find(s.Check)!.Gate));
        var instruments = Visits[0].Workshop.Instruments.Select(i => i.Id).ToHashSet();
        Assert.All(Visits.SelectMany(v => v.Readings).Where(r => r.Instrument is not null), r => Assert.Contains(r.Instrument!.Value, instruments));
    }

    [Fact]
    public void Dates_never_run_backwards_within_a_visit_nor_beyond_today() => Assert.All(Visits, v =>
    {
        Assert.All(v.SignOffs.Select(s => s.On).Concat(v.Times.Select(t => t.On)).Concat(v.Notes.Select(n => n.On)), d => Assert.InRange(d, v.Visit.ArrivedOn, Today));
        Assert.Equal(v.SignOffs.OrderBy(s => s.On).Select(s => s.Kept), v.SignOffs.OrderBy(s => s.Kept).Select(s => s.Kept));
    });

    [Fact]
    public void The_tern_is_just_before_its_hand_over_with_every_stage_done()
    {
        Assert.All(Route.Stages.Where(s => s != Stage.HandOver), s => Assert.Equal(StageState.Done, Route.StateOf(Tern, s)));
        Assert.Equal("Sign the account", NextSteps.Of(new AdviceContext(Tern, Now))[0].Sentence);
        Assert.Equal("The gauge lies, she dies on long bends, and she's lumpy at the lights.", Tern.Visit.Complaint);
        Assert.All(new[] { Severity.Unsafe, Severity.Soon, Severity.Watch }, s => Assert.Contains(Tern.Findings, f => f.Severity == s));
        Assert.All(Enum.GetValues<WorkKind>(), k => Assert.Contains(Tern.Notes, n => n.Kind == k));
    }

    [Theory]
    [InlineData(Gate.EngineMayRun, 3)]
    [InlineData(Gate.FitToTune, 3)]
    [InlineData(Gate.FitForRoad, 1)]
    public void The_terns_taps_were_open_on_the_day_they_were_needed(Gate gate, int daysAgo) =>
        Assert.Equal(GateState.Open, GateStatus.Of(Tern with { SignOffs = [.. Tern.SignOffs.Where(s => s.On <= Today.AddDays(-daysAgo))] }, gate, Today.AddDays(-daysAgo)).State);

    [Fact]
    public void Six_barrels_stand_as_found_beside_as_left()
    {
        Assert.Equal((2.2, 0.2), (Spread(Moment.AsFound), Spread(Moment.AsLeft)));
        Assert.Equal(9, Tern.Readings.Count(r => Is(r.Measure, "strappingResistance")));
    }

    [Fact]
    public void The_shop_stands_as_the_home_page_groups_it()
    {
        var board = ShopBoard.Of(Visits, Now);

        Assert.Equal("Samphire Gannet 1500, Larkfield Osprey V8, Larkfield Tern 2800", Names(board.Us));
        Assert.Equal("Marram Six Tourer", Names(board.Owner));
        Assert.Equal("Larkfield Tern 2400, Brackwater Dunlin", Names(board.PartsOrClock));
        Assert.Equal(
            "Push it outdoors before anything else|Sign the ventilation, then start the engine|Sign the account|Ring Mr H. Ashdown: new tank or reline?|Wait for two spindles, promised for 27 Nov|Leave the tank lining to cure until tomorrow 15:00",
            string.Join('|', board.Us.Concat(board.Owner).Concat(board.PartsOrClock).Select(r => r.Next!.Sentence)));
    }

    [Fact]
    public void There_is_an_earlier_visit_of_the_same_car_to_drift_from()
    {
        var first = Assert.Single(Visits, v => v.Car.Id == Tern.Car.Id && v.Visit.LeftOn is not null);

        Assert.True(first.Visit.LeftOn < Tern.Visit.ArrivedOn.AddYears(-2));
        Assert.Equal(6, first.Readings.Count(r => Is(r.Measure, "idleAirflow") && r.Moment == Moment.AsLeft));
    }

    [Fact]
    public void Nothing_in_it_is_called_safe() => Assert.DoesNotMatch(CalledSafe.Pattern(), Written(Acts));

    [Fact]
    public void On_another_day_it_is_the_same_shop() =>
        Assert.Equal(
            string.Join('|', Acts.Select(a => a.Words).Where(w => !w.StartsWith("asked", StringComparison.Ordinal))),
            string.Join('|', DemonstrationWorkshop.Acts(Documents(), new DateOnly(2028, 2, 29)).Select(a => a.Words).Where(w => !w.StartsWith("asked", StringComparison.Ordinal))));

    private static double Spread(Moment moment)
    {
        var values = Tern.Readings.Where(r => Is(r.Measure, "idleAirflow") && r.Moment == moment).Select(r => r.Si!.Value * 3600).ToList();
        Assert.Equal(6, values.Count);
        return Math.Round(values.Max() - values.Min(), 3);
    }

    private static bool Is(string text, string other) => string.Equals(text, other, StringComparison.Ordinal);

    private static string Names(IEnumerable<ShopRow> rows) => string.Join(", ", rows.Select(r => r.Record.Car.Name));

    private static string Written(IReadOnlyList<Act> acts) => string.Join('\n', acts.Select(a => $"{a.Key} {a.Words} {string.Join(' ', a.Items.Select(i => JsonSerializer.Serialize(i, i.GetType(), RecordKinds.Json)))}"));

    private static DemonstrationDocuments Documents() => new(Repository.Sample("tern-2800"), Repository.Sample("osprey-v8"), Repository.Sample("gannet-1500"));
}
