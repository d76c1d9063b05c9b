using System.Globalization;
using System.Text.Json;
using CsCheck;
using Tickover.Practice.Talk;

namespace Tickover.Practice.Tests;

/// <summary>Lines in, lines out: whatever comes in is answered by one line, and what is no act changes nothing.</summary>
public sealed class ProtocolTests
{
    private static readonly string[] Pieces =
    [
        "{", "}", "[", "]", ":", ",", "\"", "\\", "\\ud800", "round", "idle", "turn", "turns", "stop:2", "barrel", "held", "read", "air", "rods", "off", "on", "finish", "true", "1500", "-1", "1e999", "0.125", "NaN", "null",
        "offer", "bankrod", "look", "repair", "leakBelowPlate barrel 3", " ", "\t", "é", "\u0000",
    ];

    private static readonly Gen<string> Junk = One(Pieces).Array[0, 12].Select(p => string.Concat(p));

    private static readonly Gen<string> Acts = Gen.Select(
        One("round", "barrel", "turn", "rods", "look", "offer", "repair", "finish", "dance"),
        One("\"idle\"", "\"off\"", "\"on\"", "\"stop:2\"", "\"rod:2\"", "3", "1500", "-4", "1e308", "true", "null", "[]", "{}", "\"\"", "\"twistedSpindle barrel 2\"", "\"\\ud800\""),
        One("", ",\"turns\":0.125", ",\"turns\":\"x\"", ",\"turns\":1e300", ",\"held\":1500", ",\"held\":[]", ",\"read\":[\"all\"]", ",\"read\":[3]", ",\"read\":\"air\"", ",\"round\":\"idle\""),
        (act, value, more) => $"{{\"{act}\":{value}{more}}}");

    private static Gen<string> One(params string[] of) => Gen.Int[0, of.Length - 1].Select(i => of[i]);

    [Fact]
    public void Whatever_comes_in_is_answered_by_one_line_of_json()
    {
        Gen.OneOf(Junk, Acts).Array[1, 12].Sample(lines =>
        {
            var engine = PracticeEngine.Start(Plans.TwoBanks, 4, 2);
            var protocol = new PracticeProtocol(engine);
            foreach (var line in lines)
            {
                var (steps, minutes) = (engine.Steps.Count, engine.Minutes);
                var answer = protocol.Answer(line);
                using var read = JsonDocument.Parse(answer);
                var done = read.RootElement.GetProperty("done").GetBoolean();

                Assert.DoesNotContain('\n', answer);
                Assert.NotEmpty(read.RootElement.GetProperty("said").GetString()!);
                Assert.True(done || engine.Steps.Count == steps, line);
                Assert.True(done || engine.Minutes - minutes < 1, line);
            }
        }, iter: 300);
    }

    [Fact]
    public void Whatever_is_said_is_answered()
    {
        var words = One("read", "idle", "1500", "barrel", "3", "at", "turn", "stop", "2", "in", "out", "1/8", "1/0", "half", "eighths", "flats", "rods", "off", "on", "offer", "bankrod", "look", "name", "leak", "dead", "screw", "finish", "help", "list", "NaN", "-", "stop:2", "all", "air", "λ", ":").Array[0, 6];

        words.Array[1, 10].Sample(lines =>
        {
            var talk = new PracticeTalk(PracticeEngine.Start(Plans.InLine, 4, 1));
            foreach (var line in lines)
            {
                Assert.NotEmpty(talk.Answer(string.Join(' ', line)).Trim());
            }
        }, iter: 300);
    }

    [Theory]
    [InlineData("turn stop 2 in 1/8", 0.125)]
    [InlineData("turn stop:2 out 3/8", -0.375)]
    [InlineData("turn stop 2 in 1 1/8", 1.125)]
    [InlineData("turn stop 2 in half", 0.5)]
    [InlineData("turn stop 2 out 3 eighths", -0.375)]
    [InlineData("turn bypass 3 out 0.25", 0.25)]
    [InlineData("turn rod 2 longer 2 flats", 2.0 / 6)]
    [InlineData("turn bankrod shorter 1 flat", -1.0 / 6)]
    public void A_turn_is_understood_as_it_is_said(string line, double turns)
    {
        var engine = PracticeEngine.Start(Plans.TwoBanks, 4, 0);
        new PracticeTalk(engine).Answer(line);

        Assert.Equal(turns, Assert.IsType<Workshop.Balance.Turned>(Assert.Single(engine.Steps)).Turns, 4);
    }

    [Fact]
    public void What_was_practised_is_a_rounds_document_as_it_is()
    {
        var engine = PracticeEngine.Start(Plans.TwoBanks, 9, 1);
        var protocol = new PracticeProtocol(engine);
        string[] acts =
        [
            "{\"round\":\"idle\",\"read\":[\"all\"]}", "{\"turn\":\"stop:2\",\"turns\":0.125}", "{\"rods\":\"off\"}", "{\"offer\":\"rod:2\"}", "{\"look\":\"stop:1\"}", "{\"rods\":\"on\"}",
            "{\"repair\":\"meterSeal barrel 1\"}", "{\"round\":1500}",
        ];
        var steps = acts.Select(a => JsonDocument.Parse(protocol.Answer(a)).RootElement.GetProperty("step").GetRawText());
        var document = string.Create(CultureInfo.InvariantCulture, $"{{\"format\":\"tickover-rounds-1\",\"engine\":\"e\",\"steps\":[{string.Join(',', steps)}]}}");

        var (book, faults) = Workshop.Balance.Documents.RoundsDocument.Read(document, _ => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "samples", "osprey-v8.car.json")));

        Assert.Empty(faults);
        Assert.Equal(engine.Steps.Count, book!.Steps.Count);
        Assert.Equal(engine.Steps.Where(s => s is not Workshop.Balance.RoundRead and not Workshop.Balance.Turned), book.Steps.Where(s => s is not Workshop.Balance.RoundRead and not Workshop.Balance.Turned));
    }
}
