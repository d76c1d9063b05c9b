using System.Globalization;
using System.Text.Json;

namespace Tickover.Cli.Tests;

/// <summary>Rounds with something wrong in them: said plainly, with a way out, and what is right is still judged.</summary>
public sealed class BadRoundsTests
{
    private static readonly double[] Fair = [4.9, 5.0, 4.0, 3.9, 4.2, 4.1, 4.3, 4.4];

    public static TheoryData<string, string, string> Odd => new()
    {
        { "a barrel missed", Round(Fair[..7]), "Barrel 8 was not read" },
        { "read twice", Round([.. Fair], more: """,{"barrel":3,"air":4.4,"rpm":905}"""), "Barrel 3 was read 2 times (4, 4.4 kg/h)" },
        { "first read again that is not the first", Round(Fair, again: """{"barrel":2,"air":4.6,"rpm":900}"""), "Barrel 2 was read 2 times" },
        { "pounds an hour", Round([.. Fair.Select(a => Math.Round(a * 2.5, 1))]), "Was it read in lb/h?" },
        { "vacuum in inches", Round(Fair, vacuum: 18), "18 inHg is 61 kPa" },
        { "vacuum in millimetres", Round(Fair, vacuum: 450), "450 kPa is more than the air's own pressure" },
        { "air to fuel by mass", Round(Fair, more: """,{"barrel":1,"lambda":14.7,"rpm":900}"""), "14.7 is no lambda" },
        { "no such temperature", Round(Fair, more: """,{"barrel":1,"header":4000,"rpm":900}"""), "4000 °C is no temperature of a header" },
        { "no such speed", Round(Fair, rpm: "90000"), "90000 rpm is no engine speed" },
        { "flow below nothing", Round([4, 4, 4, -4, 4.1, 4, 4, 4]), "-4 kg/h is no airflow" },
        { "flow of a lorry", Round([4, 4, 4, 412, 4.1, 4, 4, 4]), "412 kg/h is no airflow" },
        { "digits changed round", Round([4.9, 5.0, 4.0, 9.3, 4.2, 4.1, 4.3, 4.4]), "digits changed round?" },
        { "rpm absent", Round(Fair, rpm: "null"), "No engine speed was noted" },
        { "all equal", Round([4, 4, 4, 4, 4, 4, 4, 4]), "All 8 read 4 kg/h to the digit" },
        { "another engine", Round([14, 15, 14.4, 14.2, 15.1, 14, 14, 14.9]), "readings of another engine" },
        { "a barrel too many", Round([.. Fair, 4.4]), "Barrel 9 is not on this engine, which has 8" },
        { "drifted", Round(Fair, again: """{"barrel":1,"air":3.9,"rpm":900}"""), "Barrel 1 moved by 1.00 kg/h while the round was read" },
        { "another speed than held", Round(Fair, of: "1500"), "was read at 900 rpm in a round held at 1500" },
    };

    public static TheoryData<string, string> Unusable => new()
    {
        { """{"turn":"stop:9","turns":0.1}""", "steps[0].turn: \"stop:9\" is not on this engine. There are bypass:1" },
        { """{"turn":"stop:1"}""", "steps[0].turns: how many turns" },
        { """{"look":"rod:77","gap":0.1}""", "steps[0]: a stop looked at or a rod offered has a key of this engine" },
        { """{"checked":"leakBelowPlate barrel 12","found":true}""", "steps[0].checked: a fault and its place" },
        { """{"rods":"sideways"}""", "steps[0].rods: \"off\" or \"on\"" },
        { """{"round":"fast","readings":[{"barrel":1,"air":4}]}""", "steps[0].round: \"idle\", or the speed held" },
        { """{"round":"idle","readings":[]}""", "steps[0].readings: at least one" },
        { """{"round":"idle","readings":[null]}""", "steps[0].readings: at least one" },
        { """{"round":"idle","moment":"later","readings":[{"barrel":1,"air":4}]}""", "steps[0].moment" },
        { """{"round":"idle","readings":[{"barrel":1,"air":4}],"again":{"air":4}}""", "steps[0].again: the barrel" },
        { """{"round":"idle","readings":[{"barrel":1,"air":1e999}]}""", "steps[0].readings: one of the figures is too large" },
        { """{"round":"idle","readings":[{"barrel":1,"air":"4,1"}]}""", "Line 1, $.steps[0].readings[0].air" },
        { """{"round":"idle","readings":[{"barrel":1,"air":4}],"turn":"stop:1","turns":0.1}""", "one thing a step, in the order done; this has round and turn" },
        { """{"readings":[]}""", "this is none of them" },
        { "null", "this is none of them" },
        { """{"dance":true}""", "this is no list of rounds" },
    };

    [Theory]
    [MemberData(nameof(Odd))]
    public async Task What_is_odd_is_said_and_the_rest_is_judged(string what, string step, string said)
    {
        var document = Document(step);
        var text = await Ran.OfAsync(document, ["balance", "-"]);
        var json = await Ran.OfAsync(document, ["balance", "-", "--json"]);

        Assert.Equal(ExitCode.Done, text.Code);
        Assert.Contains(said, OneLine(text.Output), StringComparison.Ordinal);
        Assert.Contains("Next. ", text.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", text.Output + json.Output, StringComparison.Ordinal);
        using var read = JsonDocument.Parse(json.Output);
        var round = read.RootElement.GetProperty("rounds")[0];
        Assert.True(round.GetProperty("barrels").EnumerateArray().Any(b => b.GetProperty("air").ValueKind == JsonValueKind.Number), what);
        Assert.Contains(said, round.GetProperty("void").GetString() + string.Join(' ', round.GetProperty("remarks").EnumerateArray()), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Unusable))]
    public async Task What_cannot_be_read_is_refused_with_its_place(string step, string said)
    {
        var ran = await Ran.OfAsync(Document(step), ["balance", "-"]);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains(said, ran.Error, StringComparison.Ordinal);
        Assert.Empty(ran.Output);
    }

    [Theory]
    [InlineData("", "The standard input is empty")]
    [InlineData("rubbish", "this is no list of rounds")]
    [InlineData("null", "format")]
    [InlineData("{\"format\":\"tickover-rounds-1\"}", "engine: the name of a car document")]
    [InlineData("{\"format\":\"tickover-rounds-1\",\"engine\":\"no-such.car.json\"}", "there is no file \"no-such.car.json\" beside this one")]
    [InlineData("{\"format\":\"tickover-rounds-1\",\"engine\":\"samples/faulty.car.json\"}", "samples/faulty.car.json: ")]
    [InlineData("{\"format\":\"tickover-rounds-1\",\"engine\":\"samples/osprey-v8.car.json\",\"gauges\":[\"vacum\",null]}", "\"vacum\" is nothing that is read here")]
    [InlineData("{\"format\":\"tickover-rounds-1\",\"engine\":\"samples/osprey-v8.car.json\",\"meter\":{\"air\":-1}}", "meter: what it is good to")]
    public async Task A_document_that_is_none_is_refused(string document, string said)
    {
        var ran = await Ran.OfAsync(document, ["balance", "-"]);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains(said, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task All_that_is_wrong_is_said_at_once()
    {
        var ran = await Ran.OfAsync(Document("""{"rods":"sideways"},{"turn":"stop:9","turns":1}"""), ["balance", "-"]);

        Assert.Contains("steps[0].rods", ran.Error, StringComparison.Ordinal);
        Assert.Contains("steps[1].turn", ran.Error, StringComparison.Ordinal);
    }

    private static string OneLine(string text) => string.Join(' ', text.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));

    private static string Document(string step) => $$"""{"format":"tickover-rounds-1","engine":"samples/osprey-v8.car.json","steps":[{{step}}]}""";

    private static string Round(IReadOnlyList<double> air, string of = "\"idle\"", string rpm = "900", double? vacuum = null, string more = "", string? again = null)
    {
        var readings = air.Select((a, i) => string.Create(CultureInfo.InvariantCulture, $"{{\"barrel\":{i + 1},\"air\":{a},\"rpm\":{rpm}{(vacuum is null ? "" : $",\"vacuum\":{vacuum}")}}}"));
        return $$"""{"round":{{of}},"readings":[{{string.Join(',', readings)}}{{more}}]{{(again is null ? "" : $",\"again\":{again}")}}}""";
    }
}
