using Tickover.Physics.Supply;
using Tickover.Workshop.StripDown.Levels;

namespace Tickover.Workshop.Tests.StripDown;

public sealed class LevelJudgeTests
{
    private const string Plain = """
        { "format": "tickover-level-1", "fuel": "E5", "pressure": 20, "deadHead": 25, "idleFlow": 0, "float": { "area": 9, "height": 25, "mass": 10 },
          "floatArm": 42, "needleArm": 14, "seat": 1.75, "gasket": 0.5, "nozzle": 20, "spill": 5, "carburettors": [FLOATS] }
        """;

    [Fact]
    public void A_level_is_the_float_s_depth_less_what_weight_and_pressure_sink_it()
    {
        // 10 g over 9 cm² and 25 kPa on a seat of 1.75 mm through a lever of 3, worked out from the sheet's own density
        var sheet = Read(Of("a", 15, "gasket", "top"));
        var weight = 10e-3 / (sheet.Density * 9e-4);
        var force = 20e3 * Math.PI / 4 * 1.75e-3 * 1.75e-3 / (3 * sheet.Density * 9.80665 * 9e-4);

        var verdict = LevelJudge.Judge(sheet).Carburettors.Single();

        Assert.Equal(15 + 0.5 + 25 - (1e3 * (weight + force)), verdict.Level!.Value.Value, 1e-6);
        Assert.Equal(verdict.Level.Value.Value - 20, verdict.Lip!.Value, 1e-9);
    }

    [Fact]
    public void A_straight_float_rises_as_the_fuel_line_says()
    {
        var sheet = Read(Of("a", 15, "lid", "bottom"));

        var verdict = LevelJudge.Judge(sheet with { Spill = -20 }).Carburettors.Single();

        var valve = sheet.Valve with { FloatAreaSquareMetres = 9e-4 };
        Assert.Equal(1e3 * FloatLevel.ShutOffRise(valve, 5e3, sheet.Density), verdict.RiseAtDeadHead!.Value, 1e-6);
    }

    [Fact]
    public void The_one_that_is_off_is_named_with_the_bend_that_puts_it_right()
    {
        var answer = LevelJudge.Judge(Read($"{Of("front", 15, "lid", "top")}, {Of("middle", 15.1, "lid", "top")}, {Of("rear", 16.5, "lid", "top")}"));

        Assert.True(answer.IsNo);
        Assert.Equal([LevelFinding.Equal, LevelFinding.Equal, LevelFinding.Low], answer.Carburettors.Select(c => c.Finding));
        Assert.Equal(-1.4 / 3, answer.Carburettors[2].Tang, 1e-6);
        Assert.Contains("rear", answer.Verdict, StringComparison.Ordinal);
        Assert.Contains("higher", answer.Carburettors[2].Words[0], StringComparison.Ordinal);
    }

    [Fact]
    public void The_bend_puts_it_right()
    {
        var off = LevelJudge.Judge(Read($"{Of("front", 15, "lid", "top")}, {Of("middle", 15, "lid", "top")}, {Of("rear", 14, "lid", "top")}")).Carburettors[2];

        var mended = LevelJudge.Judge(Read($"{Of("front", 15, "lid", "top")}, {Of("middle", 15, "lid", "top")}, {Of("rear", 14 + (3 * off.Tang), "lid", "top")}"));

        Assert.Equal(LevelFinding.High, off.Finding);
        Assert.False(mended.IsNo);
        Assert.Equal(0, mended.Spread!.Value, 1e-9);
    }

    [Fact]
    public void What_the_readings_cannot_decide_is_not_decided()
    {
        var answer = LevelJudge.Judge(Read($"{Of("front", 15, "lid", "top")}, {Of("middle", 15, "lid", "top")}, {Of("rear", 15.4, "lid", "top")}"));

        Assert.Equal(LevelFinding.Doubtful, answer.Carburettors[2].Finding);
        Assert.False(answer.IsNo);
        Assert.Contains("cannot decide", answer.Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wet_level_that_gainsays_the_dry_height_counts_and_is_told()
    {
        var dry = LevelJudge.Judge(Read(Of("front", 15, "lid", "top"))).Carburettors.Single().Level!.Value.Value;

        var wet = LevelJudge.Judge(Read(Of("front", 15, "lid", "top") is var one ? one.Replace("}", FormattableString.Invariant($", \"wet\": {dry - 3} }}"), StringComparison.Ordinal) : "")).Carburettors.Single();

        Assert.Equal(dry - 3, wet.Level!.Value.Value, 1e-9);
        Assert.Contains(wet.Words, w => w.Contains("3.0 mm higher than the dry height", StringComparison.Ordinal));
    }

    [Fact]
    public void At_its_flooding_pressure_the_fuel_stands_at_the_spill()
    {
        var sheet = Read(Of("a", 15, "lid", "top")) with { Spill = 18 };
        var flooding = LevelJudge.Judge(sheet).Carburettors.Single().Flooding;

        var just = LevelJudge.Judge(sheet with { Pressure = flooding * 0.999, DeadHead = flooding * 0.999 }).Carburettors.Single();
        var beyond = LevelJudge.Judge(sheet with { Pressure = flooding * 1.001, DeadHead = flooding * 1.001 });

        Assert.Equal(18, just.Level!.Value.Value, 0.05);
        Assert.Equal(LevelFinding.Floods, beyond.Carburettors.Single().Finding);
        Assert.True(beyond.IsNo);
    }

    [Theory]
    [InlineData("\"mass\": 10", "\"mass\": 60", "mass: 60.0 g is more than this float can carry")]
    [InlineData("\"fuel\": \"E5\"", "\"fuel\": \"brandy\"", "fuel: \"brandy\" is not known")]
    [InlineData("\"seat\": 1.75", "\"seat\": 175", "seat: 175 mm")]
    [InlineData("\"pressure\": 20", "\"pressure\": 30", "deadHead: Less than the pressure")]
    [InlineData("\"area\": 9, \"height\": 25", "\"area\": 9", "float: Its size is not told")]
    [InlineData("\"floatArm\": 42, ", "", "floatArm: Distance from pivot")]
    [InlineData("\"from\": \"lid\"", "\"from\": \"bench\"", "from: \"bench\" is no datum")]
    [InlineData("\"dry\": 15", "\"dry\": 150", "dry: 150 mm")]
    public void What_cannot_be_used_is_said(string was, string now, string said)
    {
        var (sheet, faults) = LevelDocument.Read(Plain.Replace("FLOATS", Of("a", 15, "lid", "top"), StringComparison.Ordinal).Replace(was, now, StringComparison.Ordinal));

        Assert.Null(sheet);
        Assert.Contains(faults, f => $"{f.Path}: {f.Problem}".Contains(said, StringComparison.Ordinal));
    }

    private static string Of(string where, double dry, string from, string to) => FormattableString.Invariant($$"""{ "where": "{{where}}", "dry": {{dry}}, "from": "{{from}}", "to": "{{to}}" }""");

    private static LevelSheet Read(string floats)
    {
        var (sheet, faults) = LevelDocument.Read(Plain.Replace("FLOATS", floats, StringComparison.Ordinal));
        Assert.Empty(faults);
        return sheet!;
    }
}
