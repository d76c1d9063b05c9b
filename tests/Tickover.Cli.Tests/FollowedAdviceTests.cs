using System.Diagnostics;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Tickover.Architecture.Tests;

namespace Tickover.Cli.Tests;

/// <summary>Whoever does what the advice says, and nothing else, brings a V8 with a hidden fault into limits and finds the fault.</summary>
public sealed class FollowedAdviceTests
{
    private const string Car = "samples/osprey-v8.car.json";
    private const int MostActs = 200;

    [Fact]
    public async Task By_pipe_the_advice_ends_within_limits_and_names_the_fault()
    {
        var schema = JsonSchema.FromText(Repository.Read("docs/schemas/balance.schema.json"));
        await using var engine = new FollowedAdvice(Car, "--seed", "7", "--difficulty", "1", "--json");
        Assert.Contains("tickover/practice/1", await engine.LineAsync(), StringComparison.Ordinal);
        var kind = "";
        for (var i = 0; i < MostActs && kind is not "done"; i++)
        {
            using var advice = JsonDocument.Parse(await engine.SayAsync("""{"advise":true}"""));
            Assert.True(schema.Evaluate(advice.RootElement).IsValid);
            var next = advice.RootElement.GetProperty("next");
            kind = next.GetProperty("kind").GetString();
            var answer = kind is "done" ? "" : await engine.SayAsync(Act(next, kind!));
            Assert.DoesNotContain("\"done\":false", answer, StringComparison.Ordinal);
        }

        Assert.Equal("done", kind);
        WithinAndFound(JsonNode.Parse(await engine.SayAsync("""{"finish":true}"""))!);
        Assert.Equal(ExitCode.Done, await engine.EndAsync());
    }

    [Fact]
    public async Task In_words_the_advice_ends_within_limits_and_names_the_fault()
    {
        const string Say = "  Say: ";
        await using var engine = new FollowedAdvice(Car, "--seed", "7", "--difficulty", "1");
        var say = "";
        for (var i = 0; i < MostActs && say is not "finish"; i++)
        {
            await engine.WriteAsync("advice");
            var line = "";
            while (!line.StartsWith(Say, StringComparison.Ordinal))
            {
                Assert.DoesNotContain("help shows", i > 0 ? line : "", StringComparison.Ordinal);
                line = (await engine.LineAsync())!;
            }

            say = line[Say.Length..];
            await engine.WriteAsync(say);
        }

        var end = await engine.RestAsync();
        Assert.Equal("finish", say);
        Assert.Contains("found and mended", end, StringComparison.Ordinal);
        Assert.DoesNotContain("out of limits", end, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, await engine.EndAsync());
    }

    [Fact]
    public async Task Advice_is_the_same_as_of_the_steps_written_into_a_rounds_document()
    {
        await using var engine = new FollowedAdvice(Car, "--seed", "5", "--difficulty", "2", "--json");
        await engine.LineAsync();
        string[] acts =
        [
            """{"round":"idle","read":["all"]}""", """{"round":1500}""", """{"turn":"stop:2","turns":-0.125}""", """{"barrel":[3,4]}""", """{"barrel":3}""",
            """{"rods":"off"}""", """{"round":"idle"}""", """{"look":"stop:1"}""", """{"offer":"rod:2"}""", """{"repair":"leakBelowPlate barrel 1"}""",
        ];
        var steps = new JsonArray();
        foreach (var act in acts)
        {
            var answer = JsonNode.Parse(await engine.SayAsync(act))!;
            steps.Add(answer["step"]!.DeepClone());
        }

        var rounds = new JsonObject { ["format"] = "tickover-rounds-1", ["engine"] = JsonNode.Parse(Repository.Read(Car)), ["gauges"] = new JsonArray("vacuum", "lambda", "header"), ["steps"] = steps };
        var judged = await Ran.OfAsync(rounds.ToJsonString(), ["balance", "-", "--json"]);

        Assert.Equal(string.Empty, judged.Error);
        var advised = JsonNode.Parse(await engine.SayAsync("""{"advise":true}"""))!;
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(judged.Output), advised), $"{judged.Output}\n{advised}");
    }

    [Fact]
    public async Task The_script_of_the_documentation_does_it()
    {
        const string Script = "samples/follow-advice.py";
        Assert.Contains(Repository.Read(Script).TrimEnd(), Repository.Read("docs/practice.md"), StringComparison.Ordinal);
        Assert.SkipUnless(Environment.GetEnvironmentVariable("PATH")!.Split(Path.PathSeparator).Any(p => File.Exists(Path.Combine(p, "python3"))), "No python3 here to run the script with.");
        var start = new ProcessStartInfo("python3", [Script, Car, "--seed", "7", "--difficulty", "1"])
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
            WorkingDirectory = Repository.Root,
            Environment = { ["TICKOVER"] = $"dotnet {Path.Combine(AppContext.BaseDirectory, "tickover.dll")}" },
        };

        using var run = Process.Start(start)!;
        var output = await run.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await run.WaitForExitAsync(TestContext.Current.CancellationToken);

        Assert.Equal(0, run.ExitCode);
        WithinAndFound(JsonNode.Parse(output[output.IndexOf("\n{\n", StringComparison.Ordinal)..])!);
    }

    [Theory]
    [InlineData("""{"advise":1}""")]
    [InlineData("""{"advise":true,"round":"idle"}""")]
    public async Task Advice_asked_for_otherwise_is_refused(string line)
    {
        await using var engine = new FollowedAdvice(Car, "--json");
        await engine.LineAsync();

        Assert.Contains("\"done\":false", await engine.SayAsync(line), StringComparison.Ordinal);
    }

    private static void WithinAndFound(JsonNode end)
    {
        Assert.True((bool)end["score"]!["idleWithin"]! && (bool)end["score"]!["raisedWithin"]!, end.ToJsonString());
        Assert.Equal((int)end["score"]!["faultsHidden"]!, (int)end["score"]!["faultsFound"]!);
        Assert.Equal(1, (int)end["score"]!["faultsHidden"]!);
    }

    private static string Act(JsonElement next, string kind)
    {
        var (read, held, barrels) = (next.GetProperty("read").GetRawText(), Raw(next, "heldRpm"), next.GetProperty("barrels"));
        return kind switch
        {
            "read" when barrels.GetArrayLength() > 0 => $$"""{"barrel":{{barrels.GetRawText()}},"read":{{read}}{{(held is null ? "" : $",\"held\":{held}")}}}""",
            "read" => $$"""{"round":{{held ?? "\"idle\""}},"read":{{read}}}""",
            "turn" => $$"""{"turn":{{Raw(next, "adjuster")}},"turns":{{Raw(next, "turns")}}}""",
            "rodsOff" => """{"rods":"off"}""",
            "rodsOn" => """{"rods":"on"}""",
            "offerRod" => $$"""{"offer":{{Raw(next, "adjuster")}}}""",
            "look" => $$"""{"look":{{Raw(next, "adjuster")}}}""",
            _ => $$"""{"repair":{{Raw(next, "fault")}}}""",
        };
    }

    private static string? Raw(JsonElement next, string name) => next.GetProperty(name) is { ValueKind: not JsonValueKind.Null } value ? value.GetRawText() : null;
}
