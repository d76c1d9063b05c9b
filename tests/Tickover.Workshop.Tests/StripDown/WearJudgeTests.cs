using Tickover.Physics.Breathing;
using Tickover.Physics.Inspection;
using Tickover.Workshop.Cars;
using Tickover.Workshop.StripDown.Wear;
using Tickover.Workshop.StripDown;

namespace Tickover.Workshop.Tests.StripDown;

public sealed class WearJudgeTests
{
    private const string Plain = """
        { "format": "tickover-wear-1", "idleRpm": 850, "engine": { "swept": 370, "depression": 55 },
          "carburettors": [{ "where": "front", "needle": NEEDLE, "flange": [FLANGE] }],
          "barrels": [
            { "where": "1", "carburettor": "front", "bore": 40, "plate": { "angle": 10, "light": 0, "gap": 0 }, "spindle": [{ "spindle": 7.98, "bush": 8.04, "length": 12 }], "pump": { "millilitres": 5, "strokes": 10 }, "tube": { "holes": ["2 x 1 mm at 4 mm"] }, "stopTouches": true },
            { "where": "2", "carburettor": "front", "bore": 40, "plate": PLATE, "spindle": [BUSH], "pump": { "millilitres": SHOT, "strokes": 10 }, "tube": { "holes": ["2 x 1 mm at 4 mm"] } } ] }
        """;

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void A_leak_takes_the_share_the_breathing_model_gives_it(double squareMillimetres)
    {
        const double target = 0.05; // asked: within 5 % of the breathing model
        var car = Tern();
        var sound = IdleFinder.Of(car, 850)!;
        var way = car.ToEngineSpec().Barrels[0].AirWay;
        var ours = IdleLeak.Through(way.PlateDischargeCoefficient * squareMillimetres * 1e-6, sound.Outside, sound.BehindPascals) / sound.KilogramsPerSecond;

        // the model idles with the same hole beside its plate; the plate then stands nearer shut, and air divides as the areas do
        var leaking = IdleFinder.Of(CarDocument.Change(car, "barrel.bypassArea", FormattableString.Invariant($"{squareMillimetres} mm²")).Car!, 850)!;
        var plate = BarrelFlow.PlateArea(way, leaking.PlateDegrees!.Value * Math.PI / 180);
        var model = squareMillimetres * 1e-6 / (plate + (squareMillimetres * 1e-6));

        Assert.True(Math.Abs((ours / model) - 1) < target, FormattableString.Invariant($"ours {ours:0.0000}, by the model {model:0.0000}"));
        Assert.True(leaking.PlateDegrees < sound.PlateDegrees);
    }

    [Fact]
    public void Measured_air_moves_the_plate_to_where_the_model_passes_it()
    {
        var found = IdleFinder.Of(Tern(), 850, 3.9 / 3600)!;

        Assert.Equal(3.9, 3600 * found.KilogramsPerSecond, 0.05);
        Assert.Empty(found.Doubt);
        Assert.NotEmpty(IdleFinder.Of(Tern(), 850)!.Doubt);
    }

    [Fact]
    public void A_worn_spindle_is_told_with_what_it_draws_and_between_its_bounds()
    {
        var answer = Judge(bush: """{ "spindle": 7.9, "bush": 8.24, "length": 12 }""");

        var spindle = answer.Items.First(i => i.Kind == WearKind.Spindle);
        Assert.Equal("barrel 2, outer", spindle.Where);
        Assert.Equal(WearGrade.Bad, spindle.Grade);
        Assert.InRange(spindle.KilogramsAnHour!.Value, spindle.Least!.Value, spindle.Most!.Value);
        Assert.Equal(spindle.KilogramsAnHour.Value, answer.Barrels[1].KilogramsAnHour, 1e-9);
        Assert.True(answer.IsNo);
        Assert.Contains("by-pass has no travel left", answer.Barrels[1].Words, StringComparison.Ordinal);
        Assert.True(answer.Barrels[1].PlateDegrees < answer.Barrels[0].PlateDegrees);
    }

    [Fact]
    public void A_seal_keeps_the_air_out_and_says_so()
    {
        var spindle = Judge(bush: """{ "spindle": 7.9, "bush": 8.15, "length": 12, "sealed": true }""").Items.First(i => i.Where.StartsWith("barrel 2", StringComparison.Ordinal) && i.Kind == WearKind.Spindle);

        Assert.Equal(0, spindle.KilogramsAnHour);
        Assert.True(spindle.Most > 0);
        Assert.Equal(WearGrade.Worn, spindle.Grade);
    }

    [Fact]
    public void What_is_as_it_should_be_is_left_alone()
    {
        var answer = Judge();

        Assert.False(answer.IsNo);
        Assert.StartsWith("Nothing must be renewed", answer.Verdict, StringComparison.Ordinal);
        Assert.All(answer.Barrels, b => Assert.Contains("trimmed out", b.Words, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("SHOT", "5.4", WearKind.Pump, false)]
    [InlineData("SHOT", "4.0", WearKind.Pump, true)]
    [InlineData("NEEDLE", """{ "hold": 9 }""", WearKind.Needle, true)]
    [InlineData("NEEDLE", """{ "drops": 60, "seconds": 60, "hold": 20 }""", WearKind.Needle, true)]
    [InlineData("FLANGE", """{ "gap": 0.2, "span": 60 }""", WearKind.Flange, true)]
    [InlineData("PLATE", """{ "angle": 12, "light": 0 }""", WearKind.Angle, false)]
    [InlineData("PLATE", """{ "angle": 14, "light": 0 }""", WearKind.Angle, true)]
    [InlineData("PLATE", """{ "light": 60, "gap": 0.2 }""", WearKind.Light, true)]
    public void Each_thing_measured_is_held_against_its_limit(string place, string written, WearKind kind, bool isBad)
    {
        var items = WearJudge.Judge(Read(Filled((place, written))).Sheet!).Items;

        Assert.Equal(isBad, items.Any(i => i.Kind == kind && i.Grade == WearGrade.Bad));
    }

    [Theory]
    [InlineData("BUSH", """{ "spindle": 8.2, "bush": 8.0, "length": 12 }""", "barrels[1].spindle[0].spindle: A spindle of 8.2 mm does not go into a bush of 8 mm")]
    [InlineData("BUSH", """{ "spindle": 7.9, "bush": 9.4, "length": 12 }""", "1.5 mm of clearance is no worn bush")]
    [InlineData("BUSH", """{ "spindle": 7.9, "length": 12 }""", "Spindle, bush or length of the bearing is missing")]
    [InlineData("NEEDLE", """{ "drops": 3, "seconds": 0 }""", "carburettors[0].needle.seconds: 0 s")]
    [InlineData("NEEDLE", """{ }""", "needle: Nothing was measured of it")]
    [InlineData("PLATE", """{ "longAxis": 39 }""", "A plate of 39 mm cannot shut a bore of 40 mm")]
    [InlineData("PLATE", """{ "light": 140, "gap": 0.1 }""", "plate.light: 140 % of the rim")]
    [InlineData("FLANGE", """{ "gap": 0.2 }""", "Gap or span is missing")]
    public void What_cannot_be_used_is_said(string place, string written, string said)
    {
        var (sheet, faults) = Read(Filled((place, written)));

        Assert.Null(sheet);
        Assert.Contains(faults, f => $"{f.Path}: {f.Problem}".Contains(said, StringComparison.Ordinal));
    }

    [Fact]
    public void Limits_may_be_written()
    {
        var usual = Judge(bush: """{ "spindle": 7.9, "bush": 8.06, "length": 12 }""");
        var own = WearJudge.Judge(Read(Filled(("BUSH", """{ "spindle": 7.9, "bush": 8.06, "length": 12 }""")).Replace("\"idleRpm\"", "\"limits\": { \"spindleRebush\": 0.06, \"spindleUsable\": 0.05 }, \"idleRpm\"", StringComparison.Ordinal)).Sheet!);

        Assert.Equal(WearGrade.Usable, usual.Barrels[1].Worst);
        Assert.Equal(WearGrade.Bad, own.Barrels[1].Worst);
        Assert.Contains(own.Items, i => i.Limit.EndsWith("(written in the sheet)", StringComparison.Ordinal));
    }

    [Fact]
    public void An_odd_tube_is_found_by_its_holes_and_named_by_the_shelf()
    {
        var json = Filled().Replace("\"idleRpm\"", """ "shelf": { "format": "tickover-shelf-1", "emulsionTubes": { "T7": { "count": 2, "holes": ["4 x 1 mm at 9 mm"] } } }, "idleRpm" """, StringComparison.Ordinal);
        var second = json.LastIndexOf("2 x 1 mm at 4 mm", StringComparison.Ordinal);

        var items = WearJudge.Judge(Read(json[..second] + "4 x 1.02 mm at 9.2 mm" + json[(second + "2 x 1 mm at 4 mm".Length)..]).Sheet!).Items;

        Assert.Contains(items, i => i is { Kind: WearKind.Tube, Where: "barrel 2" } && i.Words.Contains("those of a T7", StringComparison.Ordinal));
    }

    private static WearAnswer Judge(string bush = """{ "spindle": 7.98, "bush": 8.04, "length": 12 }""") => WearJudge.Judge(Read(Filled(("BUSH", bush))).Sheet!);

    private static string Filled(params (string Place, string Written)[] own)
    {
        var json = own.Aggregate(Plain, (text, one) => text.Replace(one.Place, one.Written, StringComparison.Ordinal));
        return json.Replace("NEEDLE", """{ "hold": 30 }""", StringComparison.Ordinal)
            .Replace("FLANGE", """{ "gap": 0.03, "span": 60 }""", StringComparison.Ordinal)
            .Replace("PLATE", """{ "angle": 10, "light": 0, "gap": 0 }""", StringComparison.Ordinal)
            .Replace("BUSH", """{ "spindle": 7.98, "bush": 8.04, "length": 12 }""", StringComparison.Ordinal)
            .Replace("SHOT", "5", StringComparison.Ordinal);
    }

    private static (WearSheet? Sheet, IReadOnlyList<Fault> Faults) Read(string json) => WearDocument.Read(json);

    private static Car Tern() => CarDocument.Read(Repository.Sample("tern-2800")).Car!;
}
